import { Hono } from 'hono';
import { comparisonWish, newComparison } from '#contract/comparison/comparisonWish.ts';
import { clubComparisons } from '#server/comparison/clubComparisons.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Two ways of training compared by lot: foretold, drawn, and told. */
export function comparisonRoutes(
  store: ClubStore,
  run: RunWork,
  estimator: StrengthEstimator,
  news: WorkNews,
) {
  const comparisons = clubComparisons(store, run, estimator, news);
  return new Hono()
    .post('/comparisons/outlook', noQuery, async (c) => {
      const wish = asShaped(comparisonWish, await readJson(c));
      return c.json(await comparisons.outlook(wish, c.req.raw.signal));
    })
    .post('/comparisons', noQuery, async (c) => {
      const { record, seq } = await comparisons.draw(asShaped(newComparison, await readJson(c)));
      return c.json({ comparison: record, seq }, 201);
    })
    .get('/comparisons/:id', noQuery, async (c) =>
      markedJson(c, await comparisons.told(c.req.param('id'), c.req.raw.signal)),
    );
}
