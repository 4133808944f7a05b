import { describe, expect, it } from 'vitest';
import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { Aim, Group } from '#contract/records/day.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { solveDay } from './solveDay.ts';

type Solved = NonNullable<PlanPlace['solved']>;

/** The tall lifter, whose log shows a maximum of 200 kg, with nothing hung. */
function solvedWith(change: Partial<Group>, barKg: number | null = null): Solved {
  const records = twoLifters();
  const day = structuredClone(records.day[0]!);
  const place = day.groups[0]!.places[1]!;
  Object.assign(day.groups[0]!, change, {
    places: [{ ...place, byCoach: { barKg, bands: [], chains: [] } }],
  });
  return solveDay(records, day, [longLog(records, 'tall', 200)]).groups[0]!.places[0]!.solved!;
}
const chanceOf = ({ blocks }: Solved) => blocks.at(-1)!.expected!.chanceAllReps;
const unlikely = ({ cautions }: Solved) => cautions.filter(({ code }) => code === 'unlikely');
const three = [{ sets: 3, reps: 3, restSeconds: 60, shareOfAim: 1 }];
const one = [{ sets: 1, reps: 1, restSeconds: 60, shareOfAim: 1 }];

describe('how likely the work of a day is', () => {
  it('is a caution of heavy work alone: none at half the maximum, one beyond all of it', () => {
    for (const work of ['speed', 'repeated', 'maximal'] as const) {
      expect(unlikely(solvedWith({ work, blocks: one }, 100))).toEqual([]);
      const tooHeavy = solvedWith({ work, blocks: one }, 220);
      expect(chanceOf(tooHeavy)).toBeLessThan(0.5);
      expect(unlikely(tooHeavy)).toEqual([{ code: 'unlikely', chance: chanceOf(tooHeavy) }]);
    }
  });

  it('is told of work that is less likely than its kind: nine times out of ten, four out of five, once in two', () => {
    const least = { speed: 0.9, repeated: 0.8, maximal: 0.5 };
    const likelyKinds = [190, 192.5, 195, 200].map((barKg) => {
      const kinds = (['speed', 'repeated', 'maximal'] as const).filter((work) => {
        const solved = solvedWith({ work, blocks: one }, barKg);
        const isLikely = chanceOf(solved) >= least[work];
        expect(unlikely(solved)).toHaveLength(isLikely ? 0 : 1);
        return isLikely;
      });
      return kinds.length;
    });
    // The bars lie on either side of each chance.
    expect(likelyKinds).toEqual([3, 2, 1, 0]);
  });

  it('is held against the chance that the coach asks for', () => {
    const barKg = 185;
    const chance = chanceOf(solvedWith({}, barKg));
    expect(chance).toBeGreaterThan(0.52);
    expect(chance).toBeLessThan(0.97);
    expect(unlikely(solvedWith({ leastChance: chance - 0.01 }, barKg))).toEqual([]);
    expect(unlikely(solvedWith({ leastChance: chance + 0.01 }, barKg))).toHaveLength(1);
  });

  it('makes a bar lighter that is not sure enough, says from what, and leaves one alone that was set by hand', () => {
    const aim: Aim = { by: 'percent', targets: [{ basis: 'bar', share: 0.95 }] };
    const asked = solvedWith({ aim });
    const lighter = solvedWith({ aim, leastChance: 0.9 });
    expect(chanceOf(asked)).toBeLessThan(0.9);
    expect(lighter.barKg).toBeLessThan(asked.barKg);
    expect(chanceOf(lighter)).toBeGreaterThanOrEqual(0.9);
    const said = lighter.cautions.filter(({ code }) => code === 'madeLighter');
    expect(said).toEqual([{ code: 'madeLighter', fromKg: asked.barKg, chance: chanceOf(lighter) }]);
    const byHand = solvedWith({ leastChance: 0.9 }, asked.barKg);
    expect(byHand.barKg).toBe(asked.barKg);
    expect(byHand.cautions.map(({ code }) => code)).not.toContain('madeLighter');
  });
});

it('believes the first rep of a block about as fast as every output tells it', () => {
  for (const barKg of [60, 120, 180])
    for (const { effort, expected } of solvedWith({}, barKg).blocks)
      expect(expected!.firstMps!.median).toBeCloseTo(effort!.firstMps, 9);
});

const codesAt = (barKg: number) => {
  const { explanation, effort } = solvedWith({ blocks: three }, barKg).blocks[0]!;
  const codes = explanation.cautions.map(({ code }) => code);
  return [effort!.missed, codes.filter((code) => code === 'notMade' || code === 'notAllReps')];
};

describe('a rep that is missed', () => {
  it('is told once: as a bar that is not made where it is the first, else with its set', () => {
    expect(codesAt(100)).toEqual([null, []]);
    // Nobody does three sets of three with 195 kg of 200, though the first rep goes up.
    expect(codesAt(195)).toEqual([expect.anything(), ['notAllReps']]);
    expect(codesAt(230)).toEqual([expect.objectContaining({ set: 1, rep: 1 }), ['notMade']]);
  });
});

const nominal = (light: number | null) => {
  const records = twoLifters();
  records.bandPair[0]!.nominalKg = light;
  records.bandPair[1]!.nominalKg = 30;
  const day = structuredClone(records.day[0]!);
  const bands = ['light', 'heavy'].map((bandPairId) => ({ bandPairId, hookupId: 'doubled' }));
  day.groups[0]!.places[1]!.byCoach = { barKg: 60, bands, chains: null };
  return solveDay(records, day).groups[0]!.places[1]!.solved!.blocks.at(-1)!.nominalKg;
};

describe('the number of trade habit', () => {
  it('is the bar and what each pair is called by, and none as soon as one pair has no number', () => {
    expect(nominal(12)).toBeCloseTo(60 + 12 + 30, 9);
    expect(nominal(null)).toBeNull();
  });
});
