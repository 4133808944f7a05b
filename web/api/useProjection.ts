import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import type { Equipment } from '#contract/records/lift.ts';
import { slowRequest } from './slowRequest.ts';
import { clubKey } from './useClub.ts';

/** What a lifter's lifts may be on the day of a meet; the last answer stays until the next is there. Not asked for while `enabled` is false. */
export function useProjection(
  asked: {
    lifterId: string;
    on: string;
    equipment: Equipment;
    taperPercent: string;
  },
  enabled: boolean,
) {
  const query = new URLSearchParams(asked).toString();
  return useQuery({
    queryKey: [...clubKey, 'projection', query],
    queryFn: ({ signal }): Promise<LiftProjection[]> =>
      slowRequest<{ projections: LiftProjection[] }>(`/api/projection?${query}`, signal).then(
        ({ projections }) => projections,
      ),
    enabled,
    placeholderData: keepPreviousData,
  });
}
