import { useQuery } from '@tanstack/react-query';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** Every logged set of a lifter, oldest first, struck ones included; asked again whenever the club changes. Of nobody: none. */
export function useLifterSets(lifterId: string | null) {
  return useQuery({
    queryKey: [...clubKey, 'sets', lifterId],
    enabled: lifterId !== null,
    queryFn: () =>
      requestAgain<{ sets: LoggedSet[] }>(`/api/sets?lifterId=${encodeURIComponent(lifterId ?? '')}`).then(
        ({ sets }) => sets,
      ),
  });
}
