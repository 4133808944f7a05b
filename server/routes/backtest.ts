import { Hono } from 'hono';
import { backtester } from '#server/backtest/backtester.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** How past meets would have been foretold. Asked again until it is up to date: it takes a minute or two. */
export function backtestRoutes(store: ClubStore, run: RunWork, keepIn: KeptAnswers) {
  const stateNow = backtester(store, run, keepIn);
  return new Hono().get('/backtest', noQuery, async (c) => c.json(await stateNow()));
}
