import type { Query, QueryFunctionContext } from '@tanstack/react-query';
import type { ClubChanges, ClubState } from '#contract/changes/clubState.ts';
import { withChanges } from '#contract/changes/withChanges.ts';
import { lastTimesStand } from './lastTimesStand.ts';
import { request } from './request.ts';
import { takeSetsIn } from './takeSetsIn.ts';

type Context = Pick<QueryFunctionContext, 'client' | 'queryKey' | 'signal'>;

/**
 * The club as it now is. Of one that is held already only what was done since is asked for; the server sends the whole where that does
 * not tell. With the news all is asked for again that follows from the club; sets of the log come with them, and are asked for only where
 * these do not tell how a part of it reads now.
 */
export async function fetchClub({ client, queryKey, signal }: Context): Promise<ClubState> {
  const held = client.getQueryData<ClubState>(queryKey);
  if (!held?.madeAt) return request<ClubState>('GET', '/api/club', undefined, signal);
  const known = new URLSearchParams({ after: String(held.seq), madeAt: held.madeAt });
  const path = `/api/club/changes?${known}`;
  const news = await request<ClubChanges | ClubState>('GET', path, undefined, signal);
  const isWhole = 'records' in news;
  if (!isWhole && news.changes.length === 0) return held;
  const touched = isWhole ? null : news.sets;
  const areSetsAlone = !isWhole && [...Object.keys(news.put), ...Object.keys(news.removed)].length === 0;
  const isTold = (query: Query) => {
    if (touched === null) return false;
    if (showsLog(query)) return touched.length === 0 || takeSetsIn(client, query, touched);
    return areSetsAlone && touched.length > 0 && lastTimesStand(query, held, touched);
  };
  const follows = (query: Query) => query.queryKey.length > queryKey.length;
  const told = new Set(client.getQueryCache().findAll({ queryKey, predicate: follows }).filter(isTold));
  const mayDiffer = (query: Query) => follows(query) && !told.has(query);
  void client.invalidateQueries({ queryKey, predicate: mayDiffer });
  return isWhole ? news : withChanges(held, news);
}

/** Whether a query of the club shows sets of its log. */
export function showsLog({ queryKey: [, word] }: Query): boolean {
  return word === 'sets' || word === 'band-reps';
}
