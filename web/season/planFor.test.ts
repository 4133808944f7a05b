import { expect, test } from 'vitest';
import type { AskedPlan } from '#contract/season/clubSeason.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { planSeason } from '#reckon/season/planSeason.ts';
import { planFor } from './planFor.ts';

const ask = { from: '2027-01-04', meets: [{ title: 'Meet', date: '2027-05-08' }], closed: [], held: [] };
const strengthOf = (times: number | null, heightM = 0.36) => ({
  timesBodyMass: { squat: times, bench: times, deadlift: times },
  ownBoxes: [-0.03, 0, 0.06].map((aboveParallelM) => ({
    aboveParallelM,
    wantedM: heightM + aboveParallelM,
    known: 'measured' as const,
    heightM: heightM + aboveParallelM,
  })),
});

function plans(): AskedPlan[] {
  return shippedMethods.map((method) => ({
    ...planSeason(method, ask, 9.81),
    closed: [],
    held: [],
    byHand: [],
  }));
}

test('each group stands once in the plan of a lifter, whatever the strength', () => {
  for (const times of [null, 0.5, 1.5, 2, 2.5, 3, 6]) {
    const planOf = planFor(plans());
    for (const at of shippedMethods.keys())
      for (const { days } of planOf(at, strengthOf(times)).weeks)
        for (const { groups } of days) {
          const ids = groups.map(({ askedId }) => askedId);
          expect(new Set(ids).size).toBe(ids.length);
        }
  }
});

test('two of one strength whose boxes differ have the same work from their own boxes', () => {
  const planOf = planFor(plans());
  const boxesOf = (heightM: number) =>
    planOf(0, strengthOf(2, heightM)).weeks.flatMap(({ days }) =>
      days.flatMap(({ groups }) => groups.flatMap(({ start, ownBox }) => (ownBox ? [start] : []))),
    );
  const [low, high] = [boxesOf(0.34), boxesOf(0.42)];
  expect(low.length).toBeGreaterThan(10);
  expect(high.map(({ heightM }) => heightM)).toEqual(
    low.map(({ heightM }) => expect.closeTo(heightM! + 0.08, 6)),
  );
});

test('two of the same strength share a plan, and where no level is asked for everybody does', () => {
  const planOf = planFor(plans());
  for (const [at, method] of shippedMethods.entries()) {
    expect(planOf(at, strengthOf(2.6))).toBe(planOf(at, strengthOf(2.6)));
    if (!JSON.stringify(method).includes('leastTimesBodyMass'))
      expect(planOf(at, strengthOf(0.5))).toBe(planOf(at, strengthOf(6)));
  }
});
