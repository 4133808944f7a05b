import {
  type UseQueryResult,
  useIsFetching,
  useQueries,
  useQuery,
  useQueryClient,
} from '@tanstack/react-query';
import type { NearDay } from '#contract/season/nearDay.ts';
import type { StrengthAhead } from '#contract/season/strengthAhead.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

const aheadKey = [...clubKey, 'ahead'];
const pathOf = (seasonId: string, lifterId: string) =>
  `/api/seasons/${encodeURIComponent(seasonId)}/lifters/${encodeURIComponent(lifterId)}`;

/** How strong a lifter of a season may be in the weeks ahead; asked again whenever the club changes. */
export function useStrengthAhead(seasonId: string, lifterId: string) {
  return useQuery({
    queryKey: [...aheadKey, 'strength', seasonId, lifterId],
    queryFn: ({ signal }) => requestAgain<StrengthAhead>(`${pathOf(seasonId, lifterId)}/ahead`, signal),
  });
}

/**
 * Near days to bar and bands, which take a while when nobody asked before: one is asked for when the day before it is there, so that the first
 * comes first.
 */
export function useNearDays(
  seasonId: string,
  lifterId: string,
  dates: readonly string[],
): (date: string) => UseQueryResult<NearDay | null> | undefined {
  const known = useQueryClient();
  const keyOf = (date: string) => [...aheadKey, 'near', seasonId, lifterId, date];
  const isAnswered = (date: string) => (known.getQueryState(keyOf(date))?.status ?? 'pending') !== 'pending';
  const found = useQueries({
    queries: dates.map((date, at) => ({
      queryKey: keyOf(date),
      queryFn: ({ signal }: { signal: AbortSignal }) =>
        requestAgain<NearDay | null>(`${pathOf(seasonId, lifterId)}/days/${date}`, signal),
      enabled: at === 0 || isAnswered(dates[at - 1]!),
    })),
  });
  return (date) => found[dates.indexOf(date)];
}

/** Whether anything of the weeks ahead that this screen asked for is still on its way. */
export function useWorkingAhead(): boolean {
  return useIsFetching({ queryKey: aheadKey }) > 0;
}
