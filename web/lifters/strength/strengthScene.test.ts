import { expect, test } from 'vitest';
import { strengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { lifterRecords } from '../lifterRecords.ts';
import { strengthScene } from './strengthScene.ts';

const club = twoLifters();
const own = lifterRecords(club, 'short')!;
const units = { mass: 'kg', length: 'cm' } as const;
const middle = { median: 110, low80: 105, high80: 115, low95: 102, high95: 118 };
const saw = (setId: string, on: string, surprise = 0) => ({
  setId,
  on,
  says: 'atLeast' as const,
  straightKg: 100,
  surprise,
  movedKg: 0.4,
});

/** An invented estimate of the shorter lifter's squat with these sets in it. */
function estimate(observations: ReturnType<typeof saw>[]) {
  return strengthEstimate.parse({
    lifterId: 'short',
    lift: 'squat',
    on: '2026-03-01',
    setCount: observations.length,
    lastSetOn: observations.at(-1)?.on ?? null,
    bodyMassKg: 52,
    bodyMassKnown: 'measured',
    maxKg: middle,
    inEquipment: [],
    parameters: [],
    history: [
      { on: '2026-01-01', ...middle },
      { on: '2026-03-01', ...middle },
    ],
    observations,
    leftOut: [],
    draws: [],
  });
}

test('the heavier of two straight singles is the record, the box beside it one of its own', () => {
  const sets = [
    loggedSquat('light', '2026-02-01', 111),
    loggedSquat('heavy', '2026-02-08', 115),
    loggedSquat('box', '2026-02-15', 90, { with: { start: { way: 'box', heightM: 0.3 } } }),
  ];
  const seen = estimate(sets.map(({ id, doneOn }) => saw(id, doneOn)));
  const { marks } = strengthScene(club, own, seen, sets, units);
  expect(marks.map(({ key, record }) => [key, record])).toEqual([
    ['light', false],
    ['heavy', true],
    ['box', true],
  ]);
});

test('a set beyond three standard deviations either way is marked as hardly believed, and said to be', () => {
  const sets = ['2026-02-01', '2026-02-02', '2026-02-03'].map((on) => loggedSquat(on, on, 100));
  const surprises = [3.4, -3.4, 2.9];
  const seen = estimate(sets.map(({ id, doneOn }, i) => saw(id, doneOn, surprises[i])));
  const { marks } = strengthScene(club, own, seen, sets, units);
  expect(marks.map(({ doubted }) => doubted)).toEqual([true, true, false]);
  expect(marks[0]!.words).toContain('hard to believe: so much stronger');
  expect(marks[1]!.words).toContain('hard to believe: so much weaker');
  expect(marks[2]!.words).toContain('much stronger than expected');
});

test('a best that was written down acts like a set, and its words tell what it was', () => {
  const { marks } = strengthScene(club, own, estimate([saw('best short', '2026-01-15')]), [], units);
  expect(marks[0]!.words).toContain('110 kg, a single');
});

test('the attempts of one meet are one rule, and a weighing of the club stands over one typed with a set', () => {
  const at = { platform: true, place: 'County hall' };
  const sets = [
    loggedSquat('opener', '2026-02-14', 100, { ...at, bodyMassKg: 53 }),
    loggedSquat('second', '2026-02-14', 105, at),
    loggedSquat('new year', '2026-01-01', 90, { bodyMassKg: 54 }),
  ];
  const { meets, bodyMasses } = strengthScene(club, own, estimate([]), sets, units);
  expect(meets).toEqual([{ on: '2026-02-14', place: 'County hall' }]);
  expect(bodyMasses).toEqual([
    { on: '2026-01-01', massKg: 52 },
    { on: '2026-02-14', massKg: 53 },
  ]);
});
