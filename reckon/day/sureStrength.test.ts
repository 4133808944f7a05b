import { describe, expect, it } from 'vitest';
import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { solveDay } from './solveDay.ts';
import { sureAim } from './sureStrength.ts';

/** From the tables of the normal distribution, at 0.75 and 0.9 (Abramowitz & Stegun 1964, table 26.5; from memory). */
const [AT_75, AT_90] = [0.67449, 1.28155];
/** Shares of the squat's moved body and of the form of a day are those of docs/model.md. */
const [MOVED_SHARE, DAY_SD] = [0.88, 0.018];

const solvedBy = (records: ClubRecords, change: (day: Day) => void) => {
  const day = structuredClone(records.day[0]!);
  change(day);
  return solveDay(records, day).groups[0]!.places.map(({ solved }: PlanPlace) => solved!);
};
const asIs = () => {};
const codes = ({ cautions }: { cautions: { code: string }[] }) => cautions.map(({ code }) => code);

describe('the strength that proposals go by', () => {
  it('is the fresh best as it stands, and less of one that is three years old, with the reason', () => {
    const records = twoLifters();
    records.best[1]!.doneOn = '2023-03-01';
    const [short, tall] = solvedBy(records, asIs);
    expect(short!.reference).toMatchObject({ kg: 110, from: 'best', loweredFromKg: null });
    expect(codes(short!)).not.toContain('strengthWide');
    // A best is good to 3 %, and ages by 4 % a year; all is of bar and moved body together.
    const sdLn = Math.hypot(0.03, 0.04 * 3);
    const bodyKg = MOVED_SHARE * 110;
    const lowerLn = -AT_75 * Math.sqrt(sdLn ** 2 - DAY_SD ** 2) + AT_90 * DAY_SD;
    expect(tall!.reference.kg).toBeCloseTo((200 + bodyKg) * Math.exp(lowerLn) - bodyKg, 0);
    expect(tall!.reference.loweredFromKg).toBe(200);
    expect(codes(tall!)).toContain('strengthWide');
    // What other proposals go by is told with them, also where this bar was set by hand.
    const belowShare = 1 - Math.exp(-AT_75 * Math.sqrt(sdLn ** 2 - DAY_SD ** 2));
    const byHand = solvedBy(records, (day) => {
      day.groups[0]!.places[1]!.byCoach = { barKg: 100, bands: null, chains: null };
    })[1]!;
    for (const { strength } of [tall!, byHand]) expect(strength.belowShare).toBeCloseTo(belowShare, 3);
  });

  it('is told with what was taken off and the set that would tell more, and with nothing taken off where nothing was', () => {
    const records = twoLifters();
    records.best[1]!.doneOn = '2023-03-01';
    const wide = (change: (day: Day) => void) => {
      const { cautions, strength } = solvedBy(records, change)[1]!;
      const said = cautions.find((caution) => caution.code === 'strengthWide');
      return { said, belowShare: strength.belowShare };
    };
    const lowered = wide(asIs);
    expect(lowered.belowShare).toBeGreaterThan(0);
    expect(lowered.said).toMatchObject({ belowShare: lowered.belowShare, workUp: true });
    const bySpeed = wide((day) => {
      const [group] = day.groups;
      group!.aim = { by: 'speed', fromMps: 0.6, toMps: 0.8 };
      group!.blocks = group!.blocks.filter(({ shareOfAim }) => shareOfAim === 1);
    });
    expect(bySpeed.said).toMatchObject({ belowShare: 0, workUp: false });
  });

  it('is the middle of a log that tells it well where no best stands, and less of one that tells it badly', () => {
    const records = twoLifters();
    records.best = [];
    const by = (share: number) => {
      const log = longLog(records, 'tall', 200);
      const maxKg = { ...log.maxKg, low80: 200 * (1 - share), high80: 200 * (1 + share) };
      return solveDay(records, records.day[0]!, [{ ...log, maxKg }]).groups[0]!.places[1]!.solved!.reference;
    };
    expect(by(0.02)).toMatchObject({ from: 'log', kg: expect.closeTo(200, 6) });
    expect(by(0.2).kg).toBeLessThan(190);
  });

  it('is known by a log as bar and moved body together: the spread of the bar alone would be wider', () => {
    const records = twoLifters();
    const log = longLog(records, 'tall', 200);
    const bodyKg = MOVED_SHARE * 110;
    const { low80, high80 } = log.maxKg;
    const { strength } = solveDay(records, records.day[0]!, [log]).groups[0]!.places[1]!.solved!;
    // Four fifths lie within 1.28155 standard deviations either way.
    expect(strength.sdLn).toBeCloseTo(Math.log((high80 + bodyKg) / (low80 + bodyKg)) / (2 * AT_90), 6);
  });

  it('is settable: at a chance of one half it is the middle, and the surer it must be the lighter the bar', () => {
    const records = twoLifters();
    records.best[1]!.doneOn = '2022-03-01';
    const at = (strengthChance: number) => {
      records.club[0]!.strengthChance = strengthChance;
      return solvedBy(records, (day) => {
        day.groups[0]!.aim = { by: 'percent', targets: [{ basis: 'bar', share: 0.7 }] };
      })[1]!;
    };
    expect(at(0.5).reference.kg).toBe(200);
    expect(at(0.9).barKg).toBeLessThan(at(0.75).barKg);
    expect(at(0.75).barKg).toBeLessThan(at(0.5).barKg);
  });

  it('lowers what is asked of capability too, of one whose strength is assumed, but no bar set by hand', () => {
    const records = twoLifters();
    records.best = records.best.filter(({ lifterId }) => lifterId !== 'tall');
    const aim = { by: 'capability', bottomShare: 0.7, lockoutShare: 0.7 } as const;
    const at = (strengthChance: number, barKg: number | null = null) =>
      solvedBy(records, (day) => {
        const group = day.groups[0]!;
        group.aim = aim;
        const free = { leastBarShare: 0, leastBandShare: 0, mostBandShare: 2, mostPairs: 0 };
        group.bounds = { ...free, strengthChance };
        if (barKg !== null) group.places[1]!.byCoach = { barKg, bands: null, chains: null };
      })[1]!;
    const share = ({ blocks }: ReturnType<typeof at>) => {
      const { shares } = blocks.at(-1)!.explanation;
      return shares.reduce((sum, one) => sum + one.share, 0) / shares.length;
    };
    // Strength from body mass alone is good to 0.35; discs come in steps of 2.5 kg.
    const lowered = Math.exp(-AT_75 * Math.sqrt(0.35 ** 2 - DAY_SD ** 2));
    expect(share(at(0.75)) / share(at(0.5))).toBeCloseTo(lowered, 1);
    expect(at(0.75, 60).barKg).toBe(60);
    expect(codes(at(0.75, 60))).not.toContain('strengthWide');
  });

  it('leaves a best behind that the log shows out of reach even on a good day', () => {
    const records = twoLifters();
    const log = ['03', '10', '17', '24'].flatMap((day) =>
      [140, 150, 160].map((barKg, i) => ({
        ...loggedSquat(`${day} ${barKg}`, `2026-02-${day}`, barKg),
        lifterId: 'tall',
        reps: 1,
        made: barKg < 160 ? 1 : 0,
        order: i + 1,
      })),
    );
    const on = '2026-03-01';
    const tall = estimateLift(
      records,
      log,
      { lifterId: 'tall', lift: 'squat', on },
      populationPrior('squat'),
    )!;
    const solved = solveDay(records, records.day[0]!, [tall]).groups[0]!.places[1]!.solved!;
    expect(solved.reference).toMatchObject({ from: 'log', loweredFromKg: 200 });
    expect(solved.reference.kg).toBeLessThan(165);
    expect(solved.reference.kg).toBeGreaterThan(145);
    const onBar = solved.blocks.at(-1)!.explanation.percentages.find(({ basis }) => basis === 'bar')!;
    expect(onBar.share).toBeCloseTo(solved.blocks.at(-1)!.barKg / solved.reference.kg, 9);
    // Asked were 50 %.
    expect(onBar.share).toBeLessThan(0.53);
  });
});

describe('shares of what a lifter can push', () => {
  it('are asked of the strength that is sure, and any other aim as it stands', () => {
    const sure = { belowLn: Math.log(0.9), chance: 0.75 };
    expect(sureAim({ by: 'capability', bottomShare: 0.8, lockoutShare: 0.4 }, sure)).toEqual({
      by: 'capability',
      bottomShare: expect.closeTo(0.72, 12),
      lockoutShare: expect.closeTo(0.36, 12),
    });
    const speed = { by: 'speed' as const, fromMps: 0.5, toMps: 0.6 };
    expect(sureAim(speed, sure)).toBe(speed);
  });
});
