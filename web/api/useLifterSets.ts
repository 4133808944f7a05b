import { useQuery } from '@tanstack/react-query';
import { fetchSets } from './fetchSets.ts';
import { clubKey } from './useClub.ts';

/** Every logged set of a lifter, oldest first, struck ones included; as the club changes. Of nobody: none. */
export function useLifterSets(lifterId: string | null) {
  return useQuery({
    queryKey: [...clubKey, 'sets', { lifterId }],
    enabled: lifterId !== null,
    queryFn: ({ signal }) => fetchSets({ lifterId }, signal),
    select: ({ sets }) => sets,
  });
}
