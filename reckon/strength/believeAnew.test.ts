import { describe, expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { believeAnew } from './believeAnew.ts';
import { weighAndRemember } from './weighAndRemember.ts';

const lifterId = 'short';
const { best, ...others } = twoLifters();
const club = { ...others, best: best.map((one) => ({ ...one, doneOn: '2026-01-02' })) };
const FIRST = dayNumber('2026-01-05');
const log = Array.from({ length: 12 }, (_, i) =>
  loggedSquat(`${i}`, dateOfDay(FIRST + 4 * i), 90 + (i % 4), { meanSpeedsMps: [0.55 - 0.02 * (i % 4)] }),
);
const lastDay = log.at(-1)!.doneOn;
const daysAfter = (days: number) => dateOfDay(dayNumber(lastDay) + days);
const prior = populationPrior('squat');

function whole(on: string, records: ClubRecords = club) {
  const of = { lifterId, lift: 'squat' as const, on };
  return weighAndRemember({ records, log, of, prior, basis: 'same' })!;
}

function anew(from: string, on: string, records: ClubRecords = club) {
  const of = { lifterId, lift: 'squat' as const, on };
  const asked = { of, prior, basis: 'same', setsInLog: log.length };
  return believeAnew(whole(from, records).remembered, asked);
}

function widthAfter(days: number): number {
  const { low95, high95 } = anew(lastDay, daysAfter(days))!.told.maxKg;
  return high95 - low95;
}

describe('an estimate gone on from to another day', () => {
  test.each([
    ['the next morning', 0, 1],
    ['a month later', 3, 33],
    ['the day of the last set again', 20, 0],
  ])('says of %s what the whole log says of it', (_when, from, to) => {
    const { told } = anew(daysAfter(from), daysAfter(to))!;
    const { estimate } = whole(daysAfter(to));
    expect(told.on).toBe(daysAfter(to));
    expect(told.history.map(({ on }) => on)).toEqual(estimate.history.map(({ on }) => on));
    for (const name of ['median', 'low80', 'high80', 'low95', 'high95'] as const)
      expect(told.maxKg[name] / estimate.maxKg[name]).toBeCloseTo(1, 9);
    expect(told.rise.map(({ weeks }) => weeks)).toEqual(estimate.rise.map(({ weeks }) => weeks));
  });

  test('is less sure the longer nothing was logged', () => {
    expect(widthAfter(30)).toBeGreaterThan(widthAfter(2));
  });

  test('takes the whole log where the lifter weighs otherwise by then, has grown, or a best counts since', () => {
    const takenOn = daysAfter(5);
    const [heights] = club.liftHeights.filter((one) => one.lifterId === lifterId && one.lift === 'squat');
    const changes: Partial<ClubRecords>[] = [
      { bodyMass: [...club.bodyMass, { ...club.bodyMass[0]!, id: 'later', lifterId, takenOn, massKg: 99 }] },
      {
        liftHeights: [
          ...club.liftHeights,
          { ...heights!, id: 'later', measuredOn: takenOn, lockoutM: heights!.lockoutM + 0.02 },
        ],
      },
      { best: [...club.best, { ...club.best[0]!, id: 'later', lifterId, doneOn: takenOn }] },
    ];
    for (const change of changes) {
      expect(anew(lastDay, daysAfter(4), { ...club, ...change })).not.toBeNull();
      expect(anew(lastDay, daysAfter(6), { ...club, ...change })).toBeNull();
    }
  });

  test('takes the whole log for a day before its last set', () => {
    expect(anew(daysAfter(2), daysAfter(-1))).toBeNull();
  });
});
