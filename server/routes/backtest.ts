import { Hono } from 'hono';
import { noQuery } from '#server/guard/readQuery.ts';
import type { Backtester } from '#server/jobs/backtester.ts';

/** How past meets would have been foretold. Asked again until it is up to date: it takes a minute or two. */
export function backtestRoutes(backtester: Backtester) {
  return new Hono().get('/backtest', noQuery, async (c) => {
    return c.json(await backtester.state());
  });
}
