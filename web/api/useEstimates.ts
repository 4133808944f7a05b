import { useQuery } from '@tanstack/react-query';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { RequestError, request } from './request.ts';
import { clubKey } from './useClub.ts';

/** What is known of a lifter's strength, one estimate a lift; asked again whenever the club changes. */
export function useEstimates(lifterId: string) {
  return useQuery({
    queryKey: [...clubKey, 'estimates', lifterId],
    queryFn: () =>
      request<{ estimates: StrengthEstimate[] }>(
        'GET',
        `/api/estimates?lifterId=${encodeURIComponent(lifterId)}`,
      ).then(({ estimates }) => estimates, noneOfThese),
  });
}

/** A lifter of whom nothing can be said yet has no estimate. */
function noneOfThese(error: unknown): StrengthEstimate[] {
  if (error instanceof RequestError && error.status === 404) return [];
  throw error;
}
