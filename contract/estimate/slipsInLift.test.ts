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

test('a log without slips has none', () => {
  expect(
    slipsInLift(
      twoLifters(),
      singles(() => 1),
      of,
    ),
  ).toEqual([]);
});
