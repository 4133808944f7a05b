import { Hono } from 'hono';
import { z } from 'zod';
import { lastDayAhead, mostDaysAhead } from '#contract/projection/lastDayAhead.ts';
import { localDate } from '#contract/records/kind.ts';
import { equipment } from '#contract/records/lift.ts';
import { projectLift } from '#reckon/projection/projectLift.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { numberInQuery, readQuery } from '#server/guard/readQuery.ts';
import { lifterNamed } from '#server/guard/recordNamed.ts';
import { clubWithFormerGear } from '#server/jobs/clubWithFormerGear.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

const MOST_TAPER_PERCENT = 5;

/** What one lifter's lifts may be on the day of a meet ahead. */
export function projectionRoutes(store: ClubStore, estimator: StrengthEstimator) {
  return new Hono().get('/projection', async (c) => {
    const asked = readQuery(c, query);
    const lifter = await lifterNamed(store, asked.lifterId, 'meet is');
    const today = await store.today();
    const plan = {
      on: meetDate(asked.on, today),
      equipment: asked.equipment ?? lifter.equipment,
      taperShare: asked.taperPercent / 100,
    };
    const { records, log } = await clubWithFormerGear(store, { lifterId: lifter.id });
    const estimates = await estimator.ofLifter(lifter.id, today, { signal: c.req.raw.signal });
    return markedJson(c, {
      projections: estimates.map((estimate) => projectLift(records, log, estimate, plan)),
    });
  });
}

const taper = numberInQuery(
  `a number from 0 to ${MOST_TAPER_PERCENT}`,
  (percent) => percent >= 0 && percent <= MOST_TAPER_PERCENT,
);

function meetDate(on: string | undefined, today: string): string {
  if (on !== undefined && today <= on && on <= lastDayAhead(today)) return on;
  throw new Refusal(
    'invalid',
    'on',
    `on is ${on === undefined ? 'missing' : `"${on}"`}; it must be the date of a meet from today, ${today}, to ${mostDaysAhead} days ahead.`,
  );
}

const query = z.object({
  lifterId: z.string().optional(),
  on: localDate.optional(),
  equipment: equipment.optional(),
  taperPercent: taper.default(0),
});
