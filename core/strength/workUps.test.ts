import { describe, expect, it } from 'vitest';
import type { EffortGroup, Session } from './sessions.ts';
import { readWorkUps } from './workUps.ts';

// Common practice, no source: a work-up is of few reps, and ends near what the day allows. Figures of docs/model.md, "strength".

const rigging = {} as EffortGroup['rigging'];
const nothing = { mean: 0, count: 0 };
const group = (kg: number, changed: Partial<EffortGroup> = {}): EffortGroup =>
  ({
    model: { lnTotal: Math.log(kg) },
    rigging,
    equipment: null,
    platform: false,
    made: 1,
    missed: false,
    fastestMps: nothing,
    peakMps: nothing,
    reserve: nothing,
    topShare: 0,
    ...changed,
  }) as EffortGroup;
const day = (...groups: EffortGroup[]): Session => ({ day: 0, groups });
const rise = (changed?: Partial<EffortGroup>) => day(...[100, 140, 160].map((kg) => group(kg, changed)));

/** How much of an answer each set of the log is. */
function read(...sessions: Session[]): number[][] {
  readWorkUps(sessions);
  return sessions.map(({ groups }) => groups.map(({ topShare }) => topShare));
}

// Twenty sets: seventeen fives beside the work-up.
const fives = (...told: Partial<EffortGroup>[]) =>
  day(...Array.from({ length: 17 }, (_, i) => group(120, { made: 5, ...told[i] })));

const worthOf = (count: number) => {
  const shares = read(...Array.from({ length: count }, () => rise())).flat();
  return shares.reduce((sum, share) => sum + share, 0);
};

describe('a work-up that says nothing but "made"', () => {
  it('is an answer at its heaviest set alone', () => {
    expect(read(rise())).toEqual([[0, 0, 1]]);
  });

  it('is none where it ended with a miss, did not rise, or was of more than ten reps', () => {
    expect(read(day(group(100), group(140), group(160, { missed: true })))).toEqual([[0, 0, 0]]);
    expect(read(day(group(160), group(160)))).toEqual([[0, 0]]);
    expect(read(rise({ made: 3 }))).toEqual([[0, 0, 1]]);
    expect(read(rise({ made: 11 }))).toEqual([[0, 0, 0]]);
    // Another rack, other gear, the platform: no rise in one setup.
    const others = [{ rigging: { ...rigging } }, { equipment: 'wraps' as const }, { platform: true }];
    for (const other of others) expect(read(day(group(100), group(160, other)))).toEqual([[0, 0]]);
  });

  it('weighs one answer where it was of four to ten reps, all of them together, and is told apart from singles', () => {
    expect(read(rise({ made: 5 }))).toEqual([[0, 0, 1]]);
    expect(read(rise({ made: 10 }), rise({ made: 5 }))).toEqual([
      [0, 0, 0.5],
      [0, 0, 0.5],
    ]);
    expect(read(day(group(100), group(160, { made: 5 })))).toEqual([[0, 0]]);
  });

  it('never weighs more than six answers, all of them together', () => {
    expect(worthOf(5)).toBeCloseTo(5, 12);
    expect(worthOf(6)).toBeCloseTo(6, 12);
    expect(worthOf(30)).toBeCloseTo(6, 12);
  });

  it('is taken at its word where more than one set in twenty tells more, and in that equipment alone', () => {
    const spoken = { fastestMps: { mean: 0.4, count: 1 } };
    const left = { reserve: { mean: 2, count: 1 } };
    expect(read(fives(spoken), rise())[1]).toEqual([0, 0, 1]);
    expect(read(fives(spoken, left), rise())[1]).toEqual([0, 0, 0]);
    const all = { ...spoken, peakMps: { mean: 0.6, count: 2 }, ...left };
    expect(read(fives(all, all), rise())[1]).toEqual([0, 0, 0]);
    expect(read(fives(spoken, left), rise({ equipment: 'wraps' }))[1]).toEqual([0, 0, 1]);
  });
});
