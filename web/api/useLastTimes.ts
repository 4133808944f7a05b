import { useQuery } from '@tanstack/react-query';
import type { LastTime } from '#contract/day/lastTime.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** What each lifter of a day's groups did the last time; asked again whenever the club changes, but for sets that no last time can be, and not before it is wanted. */
export function useLastTimes(dayId: string, wanted: boolean): LastTime[] {
  const { data } = useQuery({
    queryKey: [...clubKey, 'lastTime', dayId],
    enabled: wanted,
    queryFn: () =>
      requestAgain<{ lastTimes: LastTime[] }>(`/api/days/${encodeURIComponent(dayId)}/last-time`),
  });
  return data?.lastTimes ?? [];
}
