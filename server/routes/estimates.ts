import { Hono } from 'hono';
import { dateIn } from '#server/guard/dateIn.ts';
import { clubToday } from '#server/jobs/clubToday.ts';
import type { StrengthEstimator } from '#server/jobs/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** What each lifter can do, by the whole log: one lifter in full, everybody in short. */
export function estimateRoutes(store: ClubStore, estimator: StrengthEstimator) {
  return new Hono()
    .get('/estimates', async (c) => {
      const lifterId = c.req.query('lifterId');
      const on = dateIn(c, 'on') ?? (await clubToday(store));
      if (lifterId === undefined)
        throw new Refusal('invalid', 'lifterId', 'lifterId must say whose estimates are asked for.');
      if (!(await store.get('lifter', lifterId)))
        throw new Refusal('missing', 'lifterId', `The club has no lifter with the id "${lifterId}".`);
      return c.json({ estimates: await estimator.ofLifter(lifterId, on) });
    })
    .get('/estimates/all', async (c) => {
      await estimator.bringUpToDate(await clubToday(store));
      return c.json({ estimates: await estimator.summaries(), progress: estimator.progress() });
    })
    .get('/estimates/progress', (c) => c.json(estimator.progress()));
}
