import { type UseQueryResult, useQueries, useQuery } from '@tanstack/react-query';
import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { RequestError } from './request.ts';
import { slowRequest } from './slowRequest.ts';
import { clubKey } from './useClub.ts';

export interface LifterEstimates {
  /** One a lift of which something is known, as far as they are there. */
  estimates: readonly StrengthEstimate[];
  /** Lifts that the server is at: for the first time, or again after a change while the last answer stands. */
  awaited: readonly Lift[];
  /** Lifts of which nothing came yet. */
  missing: readonly Lift[];
  error: Error | null;
}

/** What is known of a lifter's strength, each lift as soon as it is worked out; asked again whenever the club changes. */
export function useEstimates(lifterId: string): LifterEstimates {
  return useQueries({
    queries: askedFor.map((lift) => estimateOf(lifterId, lift)),
    combine: together,
  });
}

/** What is known of one lift of a lifter, once it is there; not asked for while `enabled` is false. */
export function useEstimate(lifterId: string, lift: Lift, enabled: boolean): StrengthEstimate | undefined {
  return useQuery({ ...estimateOf(lifterId, lift), enabled }).data?.[0];
}

function estimateOf(lifterId: string, lift: Lift) {
  return {
    queryKey: [...clubKey, 'estimates', lifterId, lift],
    queryFn: ({ signal }: { signal: AbortSignal }) =>
      slowRequest<{ estimates: StrengthEstimate[] }>(
        `/api/estimates?${new URLSearchParams({ lifterId, lift })}`,
        signal,
      ).then(({ estimates }) => estimates, noneOfThese),
  };
}

/** The last one first: of what waits, the server does first what was asked for last. */
const askedFor: readonly Lift[] = liftShape.options.toReversed();

function together(answers: readonly UseQueryResult<StrengthEstimate[]>[]): LifterEstimates {
  const inOrder = answers
    .map(({ data, error, isFetching, isPending }, i) => ({
      lift: askedFor[i]!,
      data,
      error,
      isFetching,
      isPending,
    }))
    .toReversed();
  return {
    estimates: inOrder.flatMap(({ data }) => data ?? []),
    awaited: inOrder.flatMap(({ isFetching, lift }) => (isFetching ? [lift] : [])),
    missing: inOrder.flatMap(({ isPending, lift }) => (isPending ? [lift] : [])),
    error: inOrder.find(({ error }) => error !== null)?.error ?? null,
  };
}

/** A lifter of whom nothing can be said yet has no estimate. */
function noneOfThese(error: unknown): StrengthEstimate[] {
  if (error instanceof RequestError && error.status === 404) return [];
  throw error;
}
