import type { Query, QueryClient } from '@tanstack/react-query';
import { showsLog } from './fetchClub.ts';
import { clubKey } from './useClub.ts';

/**
 * Fetches what was done to the club, and with it what follows from that. Resolves once the records and the sets of the log are there;
 * what the server has to work out follows, and nobody who saved something is kept waiting for it.
 */
export async function refreshClub(client: QueryClient): Promise<void> {
  await client.invalidateQueries({ queryKey: clubKey, exact: true });
  const areComing = (query: Query) => showsLog(query) && query.state.fetchStatus === 'fetching';
  await client.refetchQueries({ queryKey: clubKey, predicate: areComing }, { cancelRefetch: false });
}

/** First words of the keys of queries that are answered from estimates. */
const fromEstimates = ['estimates', 'estimates-in-short', 'projection', 'capacity', 'moved', 'expected'];

/** Fetches again what rests on estimates. */
export function refreshEstimates(client: QueryClient): void {
  const restsOnThem = ({ queryKey: [, word] }: Query) =>
    typeof word === 'string' && fromEstimates.includes(word);
  void client.invalidateQueries({ queryKey: clubKey, predicate: restsOnThem });
}
