import { Hono } from 'hono';
import { lastDayAhead } from '#contract/projection/lastDayAhead.ts';
import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import { dateIn } from '#server/guard/dateIn.ts';
import { clubToday } from '#server/jobs/clubToday.ts';
import type { SeasonCapacity } from '#server/jobs/seasonCapacity.ts';
import type { StrengthEstimator } from '#server/jobs/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** What each lifter can do, by the whole log: one lifter in full, everybody in short; work capacity over a season. */
export function estimateRoutes(store: ClubStore, estimator: StrengthEstimator, capacityOf: SeasonCapacity) {
  return new Hono()
    .get('/estimates', async (c) => {
      const on = dayAskedFor(dateIn(c, 'on'), await clubToday(store));
      const lifter = await lifterNamed(store, c.req.query('lifterId'), 'estimates are');
      return c.json({ estimates: await estimator.ofLifter(lifter.id, on) });
    })
    .get('/estimates/capacity', async (c) => {
      const lifter = await lifterNamed(store, c.req.query('lifterId'), 'capacity is');
      const lift = liftNamed(c.req.query('lift'));
      const report = await capacityOf({ lifterId: lifter.id, lift, on: await clubToday(store) });
      if (report === null)
        throw new Refusal('missing', 'lift', `Nothing is logged of the ${lift} of ${lifter.name}.`);
      return c.json(report);
    })
    .get('/estimates/all', async (c) => {
      await estimator.bringUpToDate(await clubToday(store));
      return c.json({ estimates: await estimator.summaries(), progress: estimator.progress() });
    })
    .get('/estimates/progress', (c) => c.json(estimator.progress()));
}

function dayAskedFor(given: string | undefined, today: string): string {
  const last = lastDayAhead(today);
  if (given === undefined || given <= last) return given ?? today;
  throw new Refusal('invalid', 'on', `on is "${given}"; it must be a day up to ${last}.`);
}

async function lifterNamed(store: ClubStore, id: string | undefined, what: string) {
  if (id === undefined)
    throw new Refusal('invalid', 'lifterId', `lifterId is missing; it must say whose ${what} asked for.`);
  const lifter = await store.get('lifter', id);
  if (!lifter) throw new Refusal('missing', 'lifterId', `The club has no lifter with the id "${id}".`);
  return lifter;
}

function liftNamed(given: string | undefined): Lift {
  const read = liftShape.safeParse(given);
  if (read.success) return read.data;
  throw new Refusal(
    'invalid',
    'lift',
    given === undefined
      ? `lift is missing; it must be one of ${liftShape.options.join(', ')}.`
      : `lift is "${given}"; it must be one of ${liftShape.options.join(', ')}.`,
  );
}
