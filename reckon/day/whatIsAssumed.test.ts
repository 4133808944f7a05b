import { describe, expect, it } from 'vitest';
import { club } from '#contract/records/club.ts';
import type { Aim } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { evenCapability } from '#core/rep/tests/capabilities.ts';
import { assembleCapability } from '#reckon/lifter/assembleCapability.ts';
import { assembleRackGear, bandLimitsOf, emptyBarOf, searchRulesOf } from './assembleRackGear.ts';
import { referenceMaximum } from './referenceMaximum.ts';
import { strengthCautions } from './strengthCautions.ts';
import { tooWeakForBar } from './tooWeakForBar.ts';

const on = '2026-06-01';

describe('a new club, of which nothing was set', () => {
  const fresh = club.shape.parse({ id: 'club', name: 'New' });

  it('keeps its proposals to what is common practice', () => {
    // Common practice, no source (docs/model.md, "day"): 40 % on the bar at least, 25 to 45 % in bands, three pairs.
    // At most half of what a pair does lies where it is not judged (docs/model.md, "day").
    const rules = {
      safeStretch: 2.5,
      mostLateShare: 0.5,
      bounds: { leastBarShare: 0.4, leastBandShare: 0.25, mostBandShare: 0.45, mostPairs: 3 },
    };
    expect(searchRulesOf({ club: [fresh] }, { bounds: null })).toEqual(rules);
    // Nor does a club without settings go without.
    expect(searchRulesOf({ club: [] }, { bounds: null })).toEqual(rules);
  });

  it('goes by a strength that the lifter has three times out of four', () => {
    // A bar too heavy is taken to be three times as bad as one too light by as much (judgement): 3 / (3 + 1).
    expect(fresh.strengthChance).toBeCloseTo(3 / 4, 12);
  });

  it('looks at a band again after half a year or 5,000 reps, and flags a pair that differs by more than 5 %', () => {
    // Assumptions of docs/model.md, "band"; the maker's figures rule.
    const { remeasureAfterDays, remeasureAfterCycles, bandChangeMinutes } = fresh;
    expect([remeasureAfterDays, remeasureAfterCycles, bandChangeMinutes]).toEqual([180, 5000, 1]);
    expect(bandLimitsOf({ club: [fresh] })).toEqual({ safeStretch: 2.5, mismatchShare: 0.05 });
    expect(bandLimitsOf({ club: [] })).toEqual({ safeStretch: 2.5, mismatchShare: 0.05 });
    const own = { ...fresh, safeStretchRatio: 2, pairMismatchShare: 0.1 };
    expect(bandLimitsOf({ club: [own] })).toEqual({ safeStretch: 2, mismatchShare: 0.1 });
  });

  it('is taken to hold the usual bar of 20 kg on a rack of which it said nothing', () => {
    const records = twoLifters();
    const rack = { ...records.rack[0]!, barId: null };
    expect(emptyBarOf(records, rack)).toEqual({ bar: null, barKg: 20, collarsKg: 0 });
  });

  it('counts nothing for collars of a rack that has none set, and says so beside its bar', () => {
    const records = twoLifters();
    const collars = { id: 'collars', label: 'Springs', pairMassKg: 0.5, pairs: 2, note: '' };
    const barOf = (collarPairId: string | null) => {
      const rack = records.rack.map((one) => ({ ...one, collarPairId }));
      const places = { rackId: 'rack', places: [], travels: [] };
      const [assembled] = assembleRackGear({ ...records, rack, collarPair: [collars] }, 'squat', on, [
        places,
      ]);
      return [assembled!.barLabel, assembled!.gear.collarsKg];
    };
    expect(barOf(null)).toEqual(['Bar, no collars counted', 0]);
    expect(barOf('collars')).toEqual(['Bar', 0.5]);
  });
});

describe('a lifter without any best', () => {
  const records = { ...twoLifters(), best: [] };
  const start = { way: 'free' as const, heightM: null };

  it.each<[Lift, number]>([
    ['squat', 0.8],
    ['bench', 0.5],
    ['deadlift', 1],
  ])('is taken for a careful beginner, known badly: a %s of %d body masses', (lift, share) => {
    // Assumptions of docs/model.md, "lifter". The one lifter weighs 110 kg, of another nobody wrote the mass down: 75 kg.
    const nobody = { ...records, bodyMass: [] };
    expect(referenceMaximum(records, 'tall', lift, '2026-06-01').kg / (share * 110)).toBeCloseTo(1, 3);
    expect(referenceMaximum(nobody, 'tall', lift, '2026-06-01').kg / (share * 75)).toBeCloseTo(1, 3);
    const { known, strengthSdLn } = assembleCapability(records, 'tall', lift, start, '2026-06-01');
    expect([known, strengthSdLn]).toEqual(['assumed', 0.35]);
  });
});

/** Holds so much of bar and body at every height. */
const holding = (totalKg: number, referenceKg = 100, goesBy: 'log' | 'best' | 'bodyMass' = 'best') =>
  tooWeakForBar(
    {
      capability: { ...evenCapability, strengthN: totalKg * 10, movedBodyKg: 80 },
      travel: { bottomM: 0.5, lockoutM: 1, gravityMps2: 10, path: [] },
      referenceKg,
    },
    20,
    90,
    goesBy,
  );

describe('a strength too small to prescribe by', () => {
  it('carries less than half of the empty bar beside the body, or has a maximum below that', () => {
    expect(holding(80 + 10.1)).toBeNull();
    const enter =
      'too little to work out anything for a bar of 20 kg: check body mass and heights, and enter a best or log a set that was hard.';
    expect(holding(80 + 9.9)).toBe(
      `By the best that is known this lifter can hold 9.9 kg still at the hardest height beside a body of 90 kg, ${enter}`,
    );
    // Who cannot hold the own body holds nothing, not less.
    expect(holding(70, 100, 'bodyMass')).toBe(
      `By body mass alone this lifter can hold 0.0 kg still at the hardest height beside a body of 90 kg, ${enter}`,
    );
    expect(holding(200, 10.1)).toBeNull();
    expect(holding(200, 9.9, 'log')).toBe(`By the log this lifter has a maximum of 9.9 kg, ${enter}`);
  });
});

// The quartile of a normal lies 0.6745 standard deviations off; a day's form has 0.018 (judgement, docs/model.md, "strength").
const said = (belowLn: number, by: Aim['by'] = 'speed', loweredFromKg: number | null = null) => {
  const strengthSdLn = Math.hypot(belowLn / 0.6745, 0.018);
  const place = { strength: { strengthSdLn }, sure: { chance: 0.75, belowLn }, reference: { loweredFromKg } };
  return strengthCautions(
    { aim: { by }, blocks: [] } as unknown as Parameters<typeof strengthCautions>[0],
    place as unknown as Parameters<typeof strengthCautions>[1],
  );
};

const taken = (...given: [by: Aim['by'], loweredFromKg?: number]) => {
  const [caution] = said(-0.1, ...given);
  return caution?.code === 'strengthWide' ? caution.belowShare : null;
};

describe('a strength that is known badly', () => {
  it('is one whose lower quarter lies 2 % below the middle and more, beyond what a day hides', () => {
    expect(said(0.0195)).toHaveLength(0);
    expect(said(0.0205)).toHaveLength(1);
  });

  it('took something off a share of capability, and off percentages where their maximum was lowered', () => {
    const below = expect.closeTo(1 - Math.exp(-0.1), 12);
    expect([taken('capability'), taken('percent', 200)]).toEqual([below, below]);
    expect([taken('percent'), taken('speed', 200)]).toEqual([0, 0]);
  });
});
