import type { Query, QueryClient } from '@tanstack/react-query';
import type { ClubState } from '#contract/changes/clubState.ts';
import { showsLog } from './fetchClub.ts';
import { clubKey } from './useClub.ts';

/**
 * Fetches what was done to the club, and with it what follows from that. Resolves once the records and the sets of the log are there;
 * what the server has to work out follows, and nobody who saved something is kept waiting for it. `withEstimates`: these became better
 * besides.
 */
export async function refreshClub(client: QueryClient, { withEstimates = false } = {}): Promise<void> {
  const seq = () => client.getQueryData<ClubState>(clubKey)?.seq;
  const held = seq();
  await client.invalidateQueries({ queryKey: clubKey, exact: true });
  // What was done has begun the same questions already.
  if (withEstimates) refreshEstimates(client, { cancelRefetch: seq() === held });
  await client.refetchQueries({ queryKey: clubKey, predicate: setsAreComing }, { cancelRefetch: false });
}

function setsAreComing(query: Query): boolean {
  return showsLog(query) && query.state.fetchStatus === 'fetching';
}

/** First words of the keys of queries that are answered from estimates. */
const fromEstimates = [
  'estimates',
  'estimates-in-short',
  'projection',
  'capacity',
  'moved',
  'retelling',
  'ahead',
];

/** Fetches again what rests on estimates; where `cancelRefetch` is false, but what is being fetched by now. */
export function refreshEstimates(client: QueryClient, how = { cancelRefetch: true }): void {
  void client.invalidateQueries({ queryKey: clubKey, predicate: restsOnEstimates }, how);
}

function restsOnEstimates({ queryKey: [, word] }: Query): boolean {
  return typeof word === 'string' && fromEstimates.includes(word);
}
