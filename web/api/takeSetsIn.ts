import type { Query, QueryClient } from '@tanstack/react-query';
import { withTouched } from '#contract/log/withTouched.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { SetsAnswer, SetsAsked } from './fetchSets.ts';

/**
 * Takes sets that were touched into what is held of the log, in the part of it that a query asked for. False where only the server can
 * tell how that reads now: it is asked just then, the answer may be older, or words were looked for.
 */
export function takeSetsIn(client: QueryClient, query: Query, touched: readonly LoggedSet[]): boolean {
  const [, word, part] = query.queryKey;
  if (word !== 'sets' || typeof part !== 'object' || part === null) return false;
  const { words, ...asked } = part as SetsAsked;
  const { data, status, fetchStatus, isInvalidated } = query.state;
  if (words || status !== 'success' || fetchStatus !== 'idle' || isInvalidated) return false;
  const held = data as SetsAnswer;
  const sets = withTouched(held.sets, asked, touched);
  if (sets !== held.sets) client.setQueryData(query.queryKey, { ...held, sets });
  return true;
}
