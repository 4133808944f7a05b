import { type Context, Hono } from 'hono';
import { lastDayAhead, mostDaysAhead } from '#contract/projection/lastDayAhead.ts';
import { projectLift } from '#contract/projection/projectLift.ts';
import { type Equipment, equipment as equipmentShape } from '#contract/records/lift.ts';
import { dateIn } from '#server/guard/dateIn.ts';
import { clubToday } from '#server/jobs/clubToday.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { StrengthEstimator } from '#server/jobs/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

const MOST_TAPER_PERCENT = 5;

/** What one lifter's lifts may be on the day of a meet ahead. */
export function projectionRoutes(store: ClubStore, estimator: StrengthEstimator) {
  return new Hono().get('/projection', async (c) => {
    const lifterId = c.req.query('lifterId');
    if (lifterId === undefined)
      throw new Refusal('invalid', 'lifterId', 'lifterId is missing; it must say whose meet is asked for.');
    const lifter = await store.get('lifter', lifterId);
    if (!lifter)
      throw new Refusal('missing', 'lifterId', `The club has no lifter with the id "${lifterId}".`);
    const today = await clubToday(store);
    const plan = {
      on: meetDate(c, today),
      equipment: equipmentIn(c) ?? lifter.equipment,
      taperShare: taperIn(c) / 100,
    };
    const { records, log } = await clubWithFormerGear(store, { lifterId });
    const estimates = await estimator.ofLifter(lifterId, today);
    return c.json({ projections: estimates.map((estimate) => projectLift(records, log, estimate, plan)) });
  });
}

function meetDate(c: Context, today: string): string {
  const on = dateIn(c, 'on');
  if (on !== undefined && today <= on && on <= lastDayAhead(today)) return on;
  throw new Refusal(
    'invalid',
    'on',
    `on is ${on === undefined ? 'missing' : `"${on}"`}; it must be the date of a meet from today, ${today}, to ${mostDaysAhead} days ahead.`,
  );
}

function equipmentIn(c: Context): Equipment | undefined {
  const given = c.req.query('equipment');
  if (given === undefined) return undefined;
  const read = equipmentShape.safeParse(given);
  if (read.success) return read.data;
  throw new Refusal(
    'invalid',
    'equipment',
    `equipment is "${given}"; it must be one of ${equipmentShape.options.join(', ')}.`,
  );
}

function taperIn(c: Context): number {
  const given = c.req.query('taperPercent');
  const percent = given === undefined ? 0 : Number(given);
  if (percent >= 0 && percent <= MOST_TAPER_PERCENT) return percent;
  throw new Refusal(
    'invalid',
    'taperPercent',
    `taperPercent is "${given}"; it must be a number from 0 to ${MOST_TAPER_PERCENT}.`,
  );
}
