import { Hono } from 'hono';
import { readQuery } from '#server/guard/readQuery.ts';
import type { Backtester } from '#server/jobs/backtester.ts';

/** How past meets would have been foretold. Asked again until it is up to date: it takes minutes. */
export function backtestRoutes(backtester: Backtester) {
  return new Hono().get('/backtest', async (c) => {
    readQuery(c, {});
    return c.json(await backtester.state());
  });
}
