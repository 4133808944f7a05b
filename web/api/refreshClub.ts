import type { Query, QueryClient } from '@tanstack/react-query';
import { clubKey } from './useClub.ts';

/** First words of the keys of queries that are answered from estimates. */
const fromEstimates = ['estimates', 'estimates-in-short', 'projection', 'capacity', 'moved', 'expected'];
/** And of those that read the whole log. */
const fromWholeLog = ['evidence', 'backtest'];

/**
 * Fetches everything of the club again. Resolves once the records and whatever is answered at once are there; what the server
 * has to work out follows, and nobody who saved something is kept waiting for it.
 */
export async function refreshClub(client: QueryClient): Promise<void> {
  const isSlow = startsWith([...fromEstimates, ...fromWholeLog]);
  const quick = client.invalidateQueries({ queryKey: clubKey, predicate: (query) => !isSlow(query) });
  void client.invalidateQueries({ queryKey: clubKey, predicate: isSlow });
  await quick;
}

/** Fetches again what rests on estimates. */
export function refreshEstimates(client: QueryClient): void {
  void client.invalidateQueries({ queryKey: clubKey, predicate: startsWith(fromEstimates) });
}

function startsWith(words: readonly string[]): (query: Query) => boolean {
  return ({ queryKey: [, word] }) => typeof word === 'string' && words.includes(word);
}
