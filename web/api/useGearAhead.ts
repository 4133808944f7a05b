import { useQuery } from '@tanstack/react-query';
import type { GearWarning } from '#contract/season/gearWarning.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** Where racks and bands do not do for the seasons ahead; asked again whenever the club changes. */
export function useGearAhead() {
  const query = useQuery({
    queryKey: [...clubKey, 'gearAhead'],
    queryFn: ({ signal }) => requestAgain<{ warnings: GearWarning[] }>('/api/seasons/gear', signal),
  });
  return { warnings: query.data?.warnings, error: query.error };
}
