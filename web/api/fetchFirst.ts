import type { QueryClient } from '@tanstack/react-query';
import { wholeClub } from './useClub.ts';
import { lastPrescription } from './usePrescription.ts';
import { seasonOffer } from './useSeason.ts';

/**
 * Fetches what the page at this path shows first, so that it is drawn once, with everything, and not a piece at a time. What could not be
 * fetched is asked for again, and told, by the page.
 */
export async function fetchFirst(client: QueryClient, path: string): Promise<void> {
  const dayId = /^\/day\/([^/.]+)/.exec(path)?.[1];
  const seasonId = /^\/season\/([^/.]+)/.exec(path)?.[1];
  await Promise.all([
    client.prefetchQuery(wholeClub),
    dayId !== undefined &&
      dayId !== 'new' &&
      client.prefetchQuery(lastPrescription(decodeURIComponent(dayId))),
    seasonId !== undefined &&
      !['new', 'methods'].includes(seasonId) &&
      client.prefetchQuery(seasonOffer(decodeURIComponent(seasonId))),
  ]);
}
