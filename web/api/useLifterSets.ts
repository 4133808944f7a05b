import { useQuery } from '@tanstack/react-query';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** Every logged set of a lifter, oldest first, struck ones included; asked again whenever the club changes. */
export function useLifterSets(lifterId: string) {
  return useQuery({
    queryKey: [...clubKey, 'sets', lifterId],
    queryFn: () =>
      requestAgain<{ sets: LoggedSet[] }>(`/api/sets?lifterId=${encodeURIComponent(lifterId)}`).then(
        ({ sets }) => sets,
      ),
  });
}
