import { useQuery } from '@tanstack/react-query';
import type { Lift } from '#contract/records/lift.ts';
import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import { slowRequest } from './slowRequest.ts';
import { clubKey } from './useClub.ts';

/** A lifter's work capacity in a lift over the season; asked again whenever the club changes. */
export function useCapacity(asked: { lifterId: string; lift: Lift }) {
  const query = new URLSearchParams(asked).toString();
  return useQuery({
    queryKey: [...clubKey, 'capacity', query],
    queryFn: ({ signal }) => slowRequest<CapacityReport>(`/api/estimates/capacity?${query}`, signal),
  });
}
