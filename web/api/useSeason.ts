import { queryOptions, useMutation, useQuery, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { SeasonOffer, TakenSeason } from '#contract/season/seasonOffer.ts';
import { request, requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

const seasonKey = (seasonId: string) => [...clubKey, 'season', seasonId] as const;
const pathOf = (seasonId: string) => `/api/seasons/${encodeURIComponent(seasonId)}`;

/** A season as the records ask for it now, beside the plan that was taken last. Waits (suspends) until it is there; asked again whenever the club changes. */
export function useSeasonOffer(seasonId: string): SeasonOffer {
  return useSuspenseQuery(seasonOffer(seasonId)).data;
}

/** For `useSeasonOffer`, and for whoever asks before a screen is there. */
export const seasonOffer = (seasonId: string) =>
  queryOptions({
    queryKey: seasonKey(seasonId),
    queryFn: ({ signal }) => requestAgain<SeasonOffer>(`${pathOf(seasonId)}/plan`, signal),
  });

/** A plan as it was taken, by its number. */
export function useTakenSeason(seasonId: string, number: number) {
  return useQuery({
    queryKey: ['taken', seasonId, number],
    queryFn: () => request<TakenSeason>('GET', `${pathOf(seasonId)}/taken/${number}`),
  });
}

/** Takes the plan as it is now (null), or one that was taken before, as the next number. */
export function useTakePlan(seasonId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (again: number | null) => request('POST', `${pathOf(seasonId)}/taken`, { again }),
    onSuccess: () => client.invalidateQueries({ queryKey: seasonKey(seasonId) }),
  });
}
