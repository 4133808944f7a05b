import { useQuery } from '@tanstack/react-query';
import type { NearWeek } from '#contract/season/nearWeek.ts';
import type { StrengthAhead } from '#contract/season/strengthAhead.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

const pathOf = (seasonId: string, lifterId: string) =>
  `/api/seasons/${encodeURIComponent(seasonId)}/lifters/${encodeURIComponent(lifterId)}`;

/** How strong a lifter of a season may be in the weeks ahead; asked again whenever the club changes. */
export function useStrengthAhead(seasonId: string, lifterId: string) {
  return useQuery({
    queryKey: [...clubKey, 'ahead', 'strength', seasonId, lifterId],
    queryFn: ({ signal }) => requestAgain<StrengthAhead>(`${pathOf(seasonId, lifterId)}/ahead`, signal),
  });
}

/** The near days of a week to bar and bands, which takes a while when nobody asked before; `isNear` false: none is asked for. */
export function useNearWeek(seasonId: string, lifterId: string, monday: string, isNear: boolean) {
  return useQuery({
    queryKey: [...clubKey, 'ahead', 'near', seasonId, lifterId, monday],
    queryFn: ({ signal }) => requestAgain<NearWeek>(`${pathOf(seasonId, lifterId)}/weeks/${monday}`, signal),
    enabled: isNear,
  });
}
