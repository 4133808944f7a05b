import { Hono } from 'hono';
import { z } from 'zod';
import { lastDayAhead } from '#contract/projection/lastDayAhead.ts';
import { localDate } from '#contract/records/kind.ts';
import { lift } from '#contract/records/lift.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery, readQuery } from '#server/guard/readQuery.ts';
import { lifterNamed } from '#server/guard/recordNamed.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { seasonCapacity } from '#server/strength/seasonCapacity.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** What each lifter can do, by the whole log: one lifter in full, everybody in short; work capacity over a season. */
export function estimateRoutes(
  store: ClubStore,
  run: RunWork,
  estimator: StrengthEstimator,
  keepIn: KeptAnswers,
) {
  const capacityOf = seasonCapacity(store, run, estimator, keepIn);
  return new Hono()
    .get('/estimates', async (c) => {
      const asked = readQuery(c, strengthQuery);
      const on = dayAskedFor(asked.on, await store.today());
      const lifter = await lifterNamed(store, asked.lifterId, 'estimates are');
      const { signal } = c.req.raw;
      return markedJson(c, {
        estimates: await estimator.ofLifter(lifter.id, on, { lift: asked.lift, signal }),
      });
    })
    .get('/estimates/capacity', async (c) => {
      const asked = readQuery(c, capacityQuery);
      const lifter = await lifterNamed(store, asked.lifterId, 'capacity is');
      const of = { ...asked, lifterId: lifter.id, on: await store.today() };
      const report = await capacityOf(of, c.req.raw.signal);
      if (report === null)
        throw new Refusal('missing', 'lift', `Nothing is logged of the ${asked.lift} of ${lifter.name}.`);
      return markedJson(c, report);
    })
    .get('/estimates/all', noQuery, async (c) => {
      await estimator.bringUpToDate(await store.today());
      return markedJson(c, { estimates: await estimator.summaries(), progress: estimator.progress() });
    })
    .get('/estimates/progress', noQuery, (c) => markedJson(c, estimator.progress()));
}

const lifterId = z.string().optional();

function dayAskedFor(given: string | undefined, today: string): string {
  const last = lastDayAhead(today);
  if (given === undefined || given <= last) return given ?? today;
  throw new Refusal('invalid', 'on', `on is "${given}"; it must be a day up to ${last}.`);
}

const strengthQuery = z.object({ lifterId, on: localDate.optional(), lift: lift.optional() });
const capacityQuery = z.object({ lifterId, lift });
