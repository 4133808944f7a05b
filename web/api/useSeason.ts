import { queryOptions, useMutation, useQuery, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { SeasonOffer, TakenSeason } from '#contract/season/seasonOffer.ts';
import type { SentOffer, SentTaken } from '#contract/season/sentSeason.ts';
import { weeksInPlans } from '#contract/season/sentWeeks.ts';
import type { WeekTaking } from '#contract/season/weekTaking.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { refreshClub } from './refreshClub.ts';
import { request, requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';
import { useUndo } from './useUndo.ts';

const seasonKey = (seasonId: string) => [...clubKey, 'season', seasonId] as const;
const pathOf = (seasonId: string) => `/api/seasons/${encodeURIComponent(seasonId)}`;

/** A season as the records ask for it now, beside the plan that was taken last. Waits (suspends) until it is there; asked again whenever the club changes. */
export function useSeasonOffer(seasonId: string): SeasonOffer {
  return useSuspenseQuery(seasonOffer(seasonId)).data;
}

/**
 * For `useSeasonOffer`, and for whoever asks before a screen is there. What the query's library would hold against what was there before would be
 * each plan by itself, and its weeks would be held in common no more.
 */
export const seasonOffer = (seasonId: string) =>
  queryOptions({
    queryKey: seasonKey(seasonId),
    queryFn: ({ signal }) => requestAgain<SentOffer>(`${pathOf(seasonId)}/plan`, signal),
    select: offerOf,
    structuralSharing: false,
  });

const offerOf = ({ plan, ...beside }: SentOffer): SeasonOffer => ({ ...beside, plan: weeksInPlans(plan) });

/** A plan as it was taken, by its number. */
export function useTakenSeason(seasonId: string, number: number) {
  return useQuery({
    queryKey: ['taken', seasonId, number],
    queryFn: () => request<SentTaken>('GET', `${pathOf(seasonId)}/taken/${number}`),
    select: takenOf,
    structuralSharing: false,
  });
}

const takenOf = ({ plan, ...head }: SentTaken): TakenSeason => ({
  ...head,
  plan: plan && weeksInPlans(plan),
});

/** Takes the plan as it is now (null), or one that was taken before, as the next number. */
export function useTakePlan(seasonId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (again: number | null) => request('POST', `${pathOf(seasonId)}/taken`, { again }),
    onSuccess: () => client.invalidateQueries({ queryKey: seasonKey(seasonId) }),
  });
}

const weekPath = (seasonId: string, monday: string) => `${pathOf(seasonId)}/weeks/${monday}`;

/** What putting a week on the training days would do, and which of its days stand there already. */
export function useWeekTaking(seasonId: string, monday: string) {
  return useQuery({
    queryKey: [...seasonKey(seasonId), 'week', monday],
    queryFn: ({ signal }) => request<WeekTaking>('GET', weekPath(seasonId, monday), undefined, signal),
  });
}

/** Puts a week on the training days by one change, which one undo takes back. */
export function useTakeWeek(seasonId: string, monday: string) {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  return useMutation({
    mutationFn: () => request<WeekTaking & { seq: number }>('POST', weekPath(seasonId, monday)),
    onSuccess: async ({ seq }) => {
      await refreshClub(client);
      say('The week is on the Day screen.', () => undo(seq));
    },
  });
}
