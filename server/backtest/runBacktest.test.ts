import { expect, test } from 'vitest';
import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { foretellMeets } from './foretellMeets.ts';
import { runBacktest } from './runBacktest.ts';

const run = async (...[asked, tell]: Parameters<typeof foretellMeets>) => foretellMeets(asked, tell);

const MEET = '2026-05-02';
const box = { start: { way: 'box' as const, heightM: 0.36 } };
const training = [
  loggedSquat('b0', '2026-02-16', 117.5, { with: box, repsInReserve: 0 }),
  loggedSquat('b1', '2026-02-20', 120, { with: box, repsInReserve: 0 }),
  loggedSquat('p0', '2026-03-01', 110, { platform: true }),
  loggedSquat('b2', '2026-04-10', 127.5, { with: box, repsInReserve: 0 }),
  loggedSquat('b3', '2026-04-14', 125, { with: box, repsInReserve: 0 }),
  loggedSquat('f1', '2026-04-20', 112.5, { repsInReserve: 4 }),
];
const meet = [
  loggedSquat('a1', MEET, 107.5, { platform: true, order: 1 }),
  loggedSquat('a2', MEET, 115, { platform: true, order: 2 }),
  loggedSquat('a3', MEET, 120, { platform: true, order: 3, made: 0 }),
];

const backtestOf = (records: ClubRecords, log: LoggedSet[]) =>
  runBacktest({ records, log }, run, 1, () => {});
const meetOf = ({ lifts }: BacktestReport) => {
  const one = lifts.find(({ on, lifterId }) => on === MEET && lifterId === 'short');
  if (!one) throw new Error('The meet was not foretold.');
  return one;
};
const reported = backtestOf(twoLifters(), [...training, ...meet]);

test('a past meet is foretold from the days before it alone: nothing absurd that comes later moves it', async () => {
  const records = twoLifters();
  const before = meetOf(await reported);
  const later: ClubRecords = {
    ...records,
    bodyMass: [...records.bodyMass, { id: 'late', lifterId: 'short', takenOn: MEET, massKg: 290 }],
    liftHeights: records.liftHeights
      .map((heights) => ({ ...heights }))
      .concat({
        ...records.liftHeights[0]!,
        id: 'late',
        bottomM: 0.2,
        measuredOn: MEET,
      }),
    bandReading: [
      ...records.bandReading,
      { ...records.bandReading[0]!, id: 'late', takenOn: MEET, forceN: 4000 },
    ],
    best: [
      ...records.best,
      {
        ...records.best[0]!,
        id: 'late',
        doneOn: '2026-06-01',
        setup: { ...records.best[0]!.setup, barKg: 600 },
      },
    ],
  };
  const log = [
    ...training,
    ...meet,
    loggedSquat('on the day', MEET, 500, { order: 9, bodyMassKg: 290 }),
    loggedSquat('the day after', '2026-05-03', 550),
    loggedSquat('years after', '2029-05-03', 20, { made: 0, lifterId: 'tall' }),
  ];
  const after = meetOf(await backtestOf(later, log));
  expect(after).toEqual(before);
  expect(before.setCount).toBe(7);
});

test('what came stands beside it: best made, lightest miss above it, both rules, a chance for each attempt', async () => {
  const one = meetOf(await reported);
  expect(one).toMatchObject({ madeKg: 115, missedKg: 120, bestSoFarKg: 112.5, ruleKg: 117.5 });
  expect(one.attempts.map(({ barKg, made }) => [barKg, made])).toEqual([
    [107.5, true],
    [115, true],
    [120, false],
  ]);
  const [first, second, third] = one.attempts.map(({ chance }) => chance);
  expect(first).toBeGreaterThan(second!);
  expect(one.placed).toEqual({ low: 1 - second!, high: 1 - third! });
});

test('a lifter of whom nothing was known is not foretold, and says so', async () => {
  const records = { ...twoLifters(), best: [] };
  const report = await backtestOf(records, meet);
  expect(report).toMatchObject({ unforetold: 1, meets: 0, lifts: [], scores: [] });
});

test('the errors are those of a hand count', async () => {
  const { scores, attempts } = await reported;
  const all = scores.find(({ of }) => of === 'all')!;
  // 110 made after a best of 110; 115 made after 112.5.
  expect(all.errors.bestSoFar).toMatchObject({ count: 2, meanKg: -1.25, meanAbsKg: 1.25 });
  expect(all.errorsTogether.rule).toMatchObject({ count: 1, meanKg: 2.5 });
  // Of the rule's one meet: made, made, missed at 120 above 117.5.
  expect(attempts).toMatchObject({ count: 4, brierCount: 3, brier: { rule: 0, bestSoFar: 1 / 3 } });
});

test('dealt out to several, meets are foretold as by one, and what is done grows up to all of it', async () => {
  const laterMeet = meet.map((set) => ({ ...set, id: `${set.id} again`, doneOn: '2026-06-06' }));
  const club = { records: twoLifters(), log: [...training, ...meet, ...laterMeet] };
  const told: [number, number][] = [];
  const dealt = await runBacktest(club, run, 2, (done, total) => told.push([done, total]));
  expect(dealt.lifts.map(({ on }) => on)).toEqual(expect.arrayContaining([MEET, '2026-06-06']));
  expect(dealt).toEqual(await runBacktest(club, run, 1, () => {}));
  const [done, total] = told.at(-1)!;
  expect(done).toBe(total);
  expect(told.map(([far]) => far)).toEqual(told.map(([far]) => far).toSorted((a, b) => a - b));
  expect(new Set(told.map(([, all]) => all))).toEqual(new Set([total]));
});
