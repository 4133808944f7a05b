import { describe, expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { takeNewest } from './takeNewest.ts';
import { type Remembered, weighAndRemember } from './weighAndRemember.ts';
import { withTakenIn } from './withTakenIn.ts';

const { best, ...others } = twoLifters();
const records = { ...others, best: best.map((one) => ({ ...one, doneOn: '2026-01-02' })) };
const FIRST = dayNumber('2026-01-05');
const of = (on: string) => ({ lifterId: 'short', lift: 'squat' as const, on });

/** Two sessions a week of three sets, in waves: singles, triples with their speed, fives with reps left. */
const log = Array.from({ length: 20 }, (_, session) => {
  const on = dateOfDay(FIRST + Math.floor(3.5 * session));
  const wave = 2.5 * (session % 4);
  return [0, 1, 2].map((i) => {
    const id = `${session} ${i}`;
    const order = i + 1;
    if (session % 3 === 0)
      return loggedSquat(id, on, 97.5 + wave + 4 * i, { order, meanSpeedsMps: [0.45 - 0.05 * i] });
    if (session % 3 === 1)
      return loggedSquat(id, on, 85 + wave, { order, reps: 3, made: 3, meanSpeedsMps: [0.6, 0.57, 0.52] });
    return loggedSquat(id, on, 75 + wave, { order, reps: 5, made: 5, repsInReserve: 3 });
  });
}).flat();
const NEWEST = 20;
const earlier = log.slice(0, -NEWEST);
const today = log.at(-1)!.doneOn;

function whole(sets: LoggedSet[], on = today) {
  const prior = populationPrior('squat');
  return weighAndRemember({ records, log: sets, of: of(on), prior, basis: 'same' })!;
}

const start = whole(earlier, earlier.at(-1)!.doneOn);
const [next] = log.slice(-NEWEST) as [LoggedSet];

function take(known: Remembered, sets: LoggedSet[], change: { setsInLog?: number; basis?: string } = {}) {
  const on = sets.at(-1)!.doneOn;
  const setsInLog = known.seen.size + sets.length;
  return takeNewest(known, { of: of(on), sets, setsInLog, basis: 'same', ...change });
}

function due(set: LoggedSet): boolean {
  return take(start.remembered, [set])!.wholeIsDue;
}

describe('the newest sets taken in alone', () => {
  test('twenty in a row leave the estimate where the whole log puts it', () => {
    let { estimate, remembered } = start;
    log.slice(-NEWEST).forEach((set, i) => {
      const answer = take(remembered, [set])!;
      estimate = withTakenIn(estimate, answer.taken);
      remembered = answer.remembered;
      expect(estimate).toMatchObject({
        takenIn: i + 1,
        setCount: start.estimate.setCount + i + 1,
        on: set.doneOn,
      });
    });
    const full = whole(log).estimate;
    const width = full.maxKg.high80 - full.maxKg.low80;
    expect(Math.abs(estimate.maxKg.median - full.maxKg.median) / width).toBeLessThan(0.1);
    expect((estimate.maxKg.high80 - estimate.maxKg.low80) / width).toBeGreaterThan(0.75);
    expect((estimate.maxKg.high80 - estimate.maxKg.low80) / width).toBeLessThan(1.35);
    expect(estimate.observations.map(({ setId }) => setId)).toEqual(
      full.observations.map(({ setId }) => setId),
    );
    expect(estimate.history.at(-1)).toEqual({ on: today, ...estimate.maxKg });
    expect(full.history.at(-1)).toEqual({ on: today, ...full.maxKg });
    const days = estimate.history.map(({ on }) => on);
    expect(days).toEqual([...new Set(days)].sort());
    expect(Object.keys(estimate).sort()).toEqual(Object.keys(full).sort());
  });

  test('a set stands for nearly the same straight weight, and says which way it moved the estimate', () => {
    const light = { ...next, setup: { ...next.setup, barKg: 112 }, meanSpeedsMps: [], reps: 1, made: 1 };
    const missed = { ...light, setup: { ...next.setup, barKg: 95 }, made: 0 };
    const [up] = take(start.remembered, [light])!.taken.observations;
    const [down] = take(start.remembered, [missed])!.taken.observations;
    expect(up).toMatchObject({ setId: next.id, says: 'atLeast', surprise: null });
    expect(down!.says).toBe('lessThan');
    expect(up!.movedKg).toBeGreaterThan(0);
    expect(down!.movedKg).toBeLessThan(0);
    const full = whole([...earlier, light], light.doneOn).estimate.observations.at(-1)!;
    expect(Math.abs(up!.straightKg / full.straightKg - 1)).toBeLessThan(0.02);
  });

  test('what was taken in before is remembered, and nothing given is changed', () => {
    const first = take(start.remembered, [next])!;
    const [, second] = log.slice(-NEWEST);
    expect(take(first.remembered, [second!])!.taken.takenIn).toBe(2);
    expect(start.remembered).toMatchObject({ takenIn: 0 });
    expect(take(start.remembered, [next])!.taken).toEqual(first.taken);
  });

  test('the whole log is due for a new setup, a platform and after weeks, not for one more of the same', () => {
    expect(due(next)).toBe(false);
    expect(due({ ...next, setup: { ...next.setup, start: { way: 'box', heightM: 0.4 } } })).toBe(true);
    expect(due({ ...next, platform: true })).toBe(true);
    expect(due({ ...next, doneOn: dateOfDay(dayNumber(next.doneOn) + 15) })).toBe(true);
  });

  test('sets that contradict all before them make it no surer than so few answers can be, and the whole log is due', () => {
    let { remembered } = start;
    let whole = false;
    for (let i = 1; i <= 20; i += 1) {
      // Every one of them heavier by far than all that the log has.
      const set = loggedSquat(`new ${i}`, today, 110 + 10 * i, { order: 10 + i, meanSpeedsMps: [0.4] });
      const answer = take(remembered, [set])!;
      // Fewer equally weighted answers (Kish) leave the spread of a normal uncertain by more than a fifth.
      expect(answer.remembered.posterior.effective).toBeGreaterThanOrEqual(15);
      ({ remembered } = answer);
      whole = answer.wholeIsDue;
    }
    expect(whole).toBe(true);
  });

  test('it takes the whole log where a set is a best, or another best counts since', () => {
    const { equipment, setup } = records.best[0]!;
    const lifted = { ...next, equipment, setup };
    const withBest = (doneOn: string) => ({
      ...start.remembered,
      records: { ...records, best: [{ ...records.best[0]!, doneOn }] },
    });
    expect(take(start.remembered, [lifted]) === null).toBe(false);
    expect(take(withBest(next.doneOn), [lifted]) === null).toBe(true);
    const doneOn = dateOfDay(dayNumber(next.doneOn) + 1);
    expect(take(start.remembered, [{ ...next, doneOn }]) === null).toBe(false);
    expect(take(withBest(doneOn), [{ ...next, doneOn }]) === null).toBe(true);
  });

  const known = earlier.at(-1)!;
  test.each<[string, LoggedSet[], { setsInLog?: number; basis?: string }]>([
    ['something else has changed', [next], { basis: 'other' }],
    ['the log has more sets than these', [next], { setsInLog: earlier.length + 2 }],
    ['nothing is new', [known], {}],
    ['a set is from an earlier day', [{ ...next, doneOn: '2026-01-06' }], {}],
    ['a set stands before the last of its day', [{ ...known, id: 'new', order: 1 }], {}],
    ['thirteen come at once', log.slice(-13), {}],
    [
      'nothing can be worked out of it',
      [{ ...next, setup: { ...next.setup, start: { way: 'box' as const, heightM: 2 } } }],
      {},
    ],
  ])('it takes the whole log where %s', (_why, sets, change) => {
    expect(take(start.remembered, sets, change)).toBeNull();
  });
});
