import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { estimateLift } from './estimateLift.ts';
import { slipsInLift } from './slipsInLift.ts';

const of = { lifterId: 'short', lift: 'squat', on: '2026-06-28' } as const;
/** Exact: NIST SP 811. */
const KG_PER_LB = 0.45359237;

/** A single of 100 kg in each of twelve weeks; `slipped` says by how much a week's bar is too large. */
function singles(slipped: (week: number) => number) {
  return Array.from({ length: 12 }, (_, week) => {
    const doneOn = new Date(Date.UTC(2026, 2, 1) + week * 7 * 86_400_000).toISOString().slice(0, 10);
    return loggedSquat(`week ${week}`, doneOn, 100 * slipped(week));
  });
}

test('what is asked about before a log is taken in is what the estimate keeps out of it afterwards', () => {
  const log = singles((week) => (week === 3 ? 10 : week === 7 || week === 8 ? 1 / KG_PER_LB : 1));
  const found = slipsInLift(twoLifters(), log, of);
  expect(found).toEqual([
    { looksLike: 'pounds', ids: ['week 7', 'week 8'] },
    { looksLike: 'tenfold', ids: ['week 3'] },
  ]);
  expect(estimateLift(twoLifters(), log, of, populationPrior('squat'))?.slips).toEqual(found);
});

test('beside one bar in pounds the other sets of its day stay in the estimate', () => {
  const benched = { lift: 'bench' } as const;
  const [, , day] = singles(() => 1);
  const beside = { ...day!, ...benched, id: 'beside', setup: { ...day!.setup, barKg: 90 }, order: 2 };
  const slippedOnce = singles((week) => (week === 2 ? 1 / KG_PER_LB : 1));
  const log = [...slippedOnce.map((set) => ({ ...set, ...benched })), beside];
  const found = [{ looksLike: 'pounds', ids: ['week 2'] }];
  expect(slipsInLift(twoLifters(), log, { ...of, ...benched })).toEqual(found);
  const estimate = estimateLift(twoLifters(), log, { ...of, ...benched }, populationPrior('bench'));
  expect(estimate).toMatchObject({ slips: found, leftOut: [] });
  expect(readIn(estimate)).toContain('beside');
  expect(readIn(estimate)).not.toContain('week 2');
});

test('a bar that the coach said is right is read by the estimate, and what is hardly believed of it is said', () => {
  const written = singles((week) => (week === 3 ? 1 / KG_PER_LB : 1));
  const log = written.map((set) => ({ ...set, barChecked: set.id === 'week 3' }));
  expect(slipsInLift(twoLifters(), log, of)).toEqual([]);
  const estimate = estimateLift(twoLifters(), log, of, populationPrior('squat'));
  expect(estimate?.slips).toEqual([]);
  expect(readIn(estimate)).toContain('week 3');
  expect(estimate?.observations.find(({ setId }) => setId === 'week 3')?.surprise).toBeGreaterThan(2);
});

function readIn(estimate: ReturnType<typeof estimateLift>): string[] {
  return estimate?.observations.map(({ setId }) => setId) ?? [];
}

test('a log without slips has none', () => {
  expect(
    slipsInLift(
      twoLifters(),
      singles(() => 1),
      of,
    ),
  ).toEqual([]);
});
