import { describe, expect, it } from 'vitest';
import type { FilteredAnswer } from './filteredAnswers.ts';
import type { GridResult } from './gridFilter.ts';
import { drift, type Lattice, meanLnOf, normalLattice, STEP_LN } from './lattice.ts';
import { type Parameters, populationPrior } from './parameters.ts';
import type { Session } from './sessions.ts';
import { smoothed } from './smoothed.ts';
import { strengthCourses } from './strengthCourses.ts';
import { strengthHistory } from './strengthHistory.ts';

/** A gain of 1 % a week and a step of 2 %: ln of 0.02 over the usual 0.006 (docs/model.md, "strength"). */
const parameters: Parameters = {
  ...populationPrior('squat').mean,
  weekGain: 0.01,
  lnWeekSd: Math.log(0.02 / 0.006),
};
const on = (...days: number[]): Session[] => days.map((day) => ({ day, groups: [] }));
const result = (filtered: Lattice[], likelihoods: Lattice[] = []): GridResult =>
  ({ filtered, likelihoods, fallShares: filtered.map(() => 0) }) as unknown as GridResult;
const sdOf = (lattice: Lattice) => {
  const middle = meanLnOf(lattice) / STEP_LN - lattice.first;
  return STEP_LN * Math.sqrt(lattice.weights.reduce((sum, weight, i) => sum + weight * (i - middle) ** 2, 0));
};
/** How likely each strength made a day, a bell about `mean`, wide enough for all that is looked at. */
const likelihood = (mean: number, sd: number): Lattice => ({
  first: 400,
  weights: Float64Array.from({ length: 200 }, (_, i) =>
    Math.exp(-(((4 + i * STEP_LN - mean) / sd) ** 2) / 2),
  ),
});
/** Two normal beliefs of one quantity that are independent: precisions add up. */
const both = (a: { mean: number; sd: number }, b: { mean: number; sd: number }) => {
  const precision = a.sd ** -2 + b.sd ** -2;
  return { mean: (a.mean / a.sd ** 2 + b.mean / b.sd ** 2) / precision, sd: precision ** -0.5 };
};
/** What a belief of later says of so many weeks before. */
const back = ({ mean, sd }: { mean: number; sd: number }, weeks: number) => ({
  mean: mean - 0.01 * weeks,
  sd: Math.hypot(sd, 0.02 * Math.sqrt(weeks)),
});

describe('strength at a session with the whole log known', () => {
  // Rauch, Tung & Striebel 1965 (AIAA J 3:1445): with normal steps and normal evidence each session's belief is that of the log up to
  // it and what all later ones say of it, precisions added.
  it('is what normal steps and normal evidence make of it, from the last session back', () => {
    const filtered = [
      { mean: 5, sd: 0.05 },
      { mean: 5.06, sd: 0.04 },
      { mean: 5.1, sd: 0.03 },
    ];
    const [second, third] = [
      { mean: 5.1, sd: 0.06 },
      { mean: 5.15, sd: 0.05 },
    ];
    const paths = smoothed(
      on(0, 14, 21),
      result(
        filtered.map(({ mean, sd }) => normalLattice(mean, sd)),
        [likelihood(5, 0.1), likelihood(second.mean, second.sd), likelihood(third.mean, third.sd)],
      ),
      parameters,
    );
    const expected = [
      both(filtered[0]!, back(both(second, back(third, 1)), 2)),
      both(filtered[1]!, back(third, 1)),
      filtered[2]!,
    ];
    for (const [i, { mean, sd }] of expected.entries()) {
      expect(Math.abs(meanLnOf(paths[i]!) - mean)).toBeLessThan(0.0005);
      expect(sdOf(paths[i]!) / sd).toBeCloseTo(1, 2);
    }
  });

  it('is kept up where what came after looks like a fall, as far as falls go', () => {
    const [first, second] = [
      { mean: 5, sd: 0.05 },
      { mean: 4.85, sd: 0.02 },
    ];
    const [path] = smoothed(
      on(0, 7),
      {
        ...result(
          [normalLattice(5, 0.05), normalLattice(4.85, 0.02)],
          [likelihood(5, 0.1), likelihood(4.85, 0.02)],
        ),
        fallShares: [0, 0.5],
      },
      parameters,
    );
    // Half of all by 0.04 and an exponential part of 0.06 in the mean (docs/model.md, "strength"), each fall weighed by how likely
    // it makes both days.
    const falls = Array.from({ length: 260 }, (_, i) => ({
      byLn: 0.04 + i / 1000,
      share: (0.5 * Math.exp(-i / 60)) / 60,
    }));
    let [sum, moment] = [0, 0];
    for (const { byLn, share } of [{ byLn: 0, share: 0.5 }, ...falls]) {
      const before = back({ ...second, mean: second.mean + byLn }, 1);
      const sd = Math.hypot(first.sd, before.sd);
      const weight = (share * Math.exp(-(((first.mean - before.mean) / sd) ** 2) / 2)) / sd;
      sum += weight;
      moment += weight * both(first, before).mean;
    }
    expect(Math.abs(meanLnOf(path!) - moment / sum)).toBeLessThan(0.003);
    expect(both(first, back(second, 1)).mean).toBeLessThan(moment / sum - 0.02);
  });

  it('stays what it was, at every strength, where nothing later says anything of it', () => {
    const open = { first: 500, weights: Float64Array.of(0.25, 0.5, 0.25) };
    const flat = { first: 400, weights: new Float64Array(200).fill(1) };
    const [path] = smoothed(on(0, 7), result([open, normalLattice(5, 0.05)], [flat, flat]), parameters);
    expect(path).toEqual({ first: 500, weights: Float64Array.of(0.25, 0.5, 0.25) });
  });

  it('is found however long the log and however unlikely each of its sessions', () => {
    // Six hundred days of which each is a thousandth as likely as it could be: 1e-1800 is no number on a computer.
    const days = Array.from({ length: 600 }, (_, day) => day);
    const unlikely = {
      ...likelihood(5, 0.1),
      weights: likelihood(5, 0.1).weights.map((value) => value / 1000),
    };
    const paths = smoothed(
      on(...days),
      result(
        days.map(() => normalLattice(5, 0.05)),
        days.map(() => unlikely),
      ),
      { ...parameters, weekGain: 0 },
    );
    expect(Math.abs(meanLnOf(paths[0]!) - 5)).toBeLessThan(0.0005);
  });

  it('is told for the last session of each week, on the scale of that day', () => {
    const days = [0, 2, 7, 9, 15];
    const filtered = days.map((day) => normalLattice(5 + day / 100, 0.05));
    const flat = likelihood(5, 1e6);
    const answer = {
      parameters,
      result: result(
        filtered,
        filtered.map(() => flat),
      ),
    } as FilteredAnswer;
    const history = strengthHistory(
      { sessions: on(...days) },
      [answer, answer],
      (lnTotal, day) => lnTotal + day,
    );
    expect(history.map(({ day }) => day)).toEqual([2, 9, 15]);
    for (const { day, belief } of history)
      expect(Math.abs(belief.median - (5 + day / 100 + day))).toBeLessThan(0.001);
  });
});

const mean = (courses: readonly number[][], of: (course: number[]) => number) =>
  courses.reduce((sum, course) => sum + of(course), 0) / courses.length;
const spread = (courses: readonly number[][], of: (course: number[]) => number) => {
  const middle = mean(courses, of);
  return Math.sqrt(mean(courses, (course) => (of(course) - middle) ** 2));
};

describe('courses of strength', () => {
  const sessions = on(0, 14);
  const first = normalLattice(5, 0.05);
  const second = drift(first, 2, parameters);
  const answer: FilteredAnswer = {
    parameters,
    strength: drift(second, 1, parameters),
    result: result([first, second]),
  };
  const answers = Array.from({ length: 60 }, () => answer);
  const courses = strengthCourses({ sessions }, answers, 21, 3);
  it('run by the week up to the day, gain as strength gains and wander as it wanders, straight between sessions', () => {
    expect(courses).toHaveLength(9 * 60);
    // 1 % a week from ln 5 on; 0.05 known at first, 0.02 a root of a week more.
    for (const [week, atWeek] of [5, 5.01, 5.02, 5.03].entries())
      expect(Math.abs(mean(courses, (course) => course[week]!) - atWeek)).toBeLessThan(0.004);
    expect(spread(courses, (course) => course[0]!) / 0.05).toBeCloseTo(1, 1);
    expect(spread(courses, (course) => course[3]!) / Math.hypot(0.05, 0.02 * Math.sqrt(3))).toBeCloseTo(1, 1);
    expect(spread(courses, (course) => course[2]! - course[0]!) / (0.02 * Math.SQRT2)).toBeCloseTo(1, 1);
    for (const [start, between, end] of courses) expect(between).toBeCloseTo((start! + end!) / 2, 9);
  });

  it('wander over many sessions as over few, and are as unsure of the first as the log is', () => {
    // Three sessions a week for half a year, none of which tells anything.
    const many = Array.from({ length: 79 }, (_, i) => Math.round((7 * i) / 3));
    const told = [first];
    for (const [i, day] of many.slice(1).entries())
      told.push(drift(told[i]!, (day - many[i]!) / 7, parameters));
    const long: FilteredAnswer = { parameters, strength: told.at(-1)!, result: result(told) };
    const half = strengthCourses(
      { sessions: on(...many) },
      Array.from({ length: 60 }, () => long),
      many.at(-1)!,
      26,
    );
    expect(spread(half, (course) => course[26]! - course[0]!) / (0.02 * Math.sqrt(26))).toBeCloseTo(1, 1);
    expect(spread(half, (course) => course[0]!) / 0.05).toBeCloseTo(1, 1);
  });

  it('go to the nearest strength that the log leaves open where no step leads from any of them', () => {
    const sure = { ...parameters, weekGain: 0, lnWeekSd: -3 };
    const open = { first: 500, weights: Float64Array.of(1, 1, 1) };
    for (const [now, before] of [
      [550, 502],
      [450, 500],
    ] as const) {
      const strength = { first: now, weights: Float64Array.of(1) };
      const far: FilteredAnswer = { parameters: sure, strength, result: result([open]) };
      for (const course of strengthCourses({ sessions: on(0) }, [far], 7, 1))
        expect(course).toEqual([expect.closeTo(before / 100, 12), expect.closeTo(now / 100, 12)]);
    }
  });

  it('come from the lowest strength left open as often as steps from there lead on', () => {
    // One week of 0.006 is 0.6 steps of the grid: 0.18 either way, 0.64 none.
    const steps = { ...parameters, weekGain: 0, lnWeekSd: 0 };
    const open = { first: 500, weights: Float64Array.of(1, 1) };
    const strength = { first: 501, weights: Float64Array.of(1) };
    const answers = Array.from({ length: 60 }, () => ({
      parameters: steps,
      strength,
      result: result([open]),
    }));
    const lower = strengthCourses({ sessions: on(0) }, answers, 7, 1).filter(([first]) => first! < 5.005);
    expect(lower.length / (9 * 60)).toBeCloseTo(0.18 / 0.82, 1);
  });

  it('end where the log ends, on the day of its newest session as later, and are of that day alone where there is none', () => {
    const today = strengthCourses({ sessions: on(0, 21) }, [{ ...answer, strength: second }], 21, 3);
    expect(today).toHaveLength(9);
    const single: FilteredAnswer = { parameters, strength: first, result: result([first]) };
    for (const sessions of [on(21), []]) {
      const none = sessions.length === 0 ? { ...single, result: result([]) } : single;
      const courses = strengthCourses(
        { sessions },
        Array.from({ length: 60 }, () => none),
        21,
        3,
      );
      expect(courses.every((course) => course.length === 1)).toBe(true);
      expect(Math.abs(mean(courses, ([value]) => value!) - 5)).toBeLessThan(0.004);
      expect(spread(courses, ([value]) => value!) / 0.05).toBeCloseTo(1, 1);
    }
  });

  it('begin with the log, and ask no more of it than the weeks that are wanted', () => {
    expect(strengthCourses({ sessions }, [answer], 21, 10)[0]).toHaveLength(4);
    const [late] = strengthCourses({ sessions }, [answer], 21, 1);
    expect(late).toHaveLength(2);
    expect(strengthCourses({ sessions: on(0, 14, 15) }, [], 21, 1)).toEqual([]);
  });
});
