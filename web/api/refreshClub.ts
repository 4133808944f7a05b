import type { Query, QueryClient } from '@tanstack/react-query';
import { showsLog } from './fetchClub.ts';
import { clubKey } from './useClub.ts';

/**
 * Fetches what was done to the club, and with it what follows from that. Resolves once the records and the sets of the log are there;
 * what the server has to work out follows, and nobody who saved something is kept waiting for it.
 */
export async function refreshClub(client: QueryClient): Promise<void> {
  await client.invalidateQueries({ queryKey: clubKey, exact: true });
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

/** Fetches again what rests on estimates. */
export function refreshEstimates(client: QueryClient): void {
  void client.invalidateQueries({ queryKey: clubKey, predicate: restsOnEstimates });
}

function restsOnEstimates({ queryKey: [, word] }: Query): boolean {
  return typeof word === 'string' && fromEstimates.includes(word);
}
