import { useQuery } from '@tanstack/react-query';
import type { BandReps } from '#contract/log/BandReps.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** How often each band pair was stretched on each day, by the log; none until the server has counted. */
export function useBandReps(): readonly BandReps[] {
  const { data } = useQuery({
    queryKey: [...clubKey, 'band-reps'],
    queryFn: async () => (await requestAgain<{ bandReps: BandReps[] }>('/api/sets/band-reps')).bandReps,
  });
  return data ?? none;
}

const none: readonly BandReps[] = [];
