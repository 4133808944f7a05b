import { keepPreviousData, useQuery, useQueryClient } from '@tanstack/react-query';
import type { ComparisonOutlook } from '#contract/comparison/comparisonOutlook.ts';
import type { ComparisonWish, NewComparison } from '#contract/comparison/comparisonWish.ts';
import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { refreshClub } from './refreshClub.ts';
import { request, requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';
import { useUndo } from './useUndo.ts';
import { forgetWork } from './useWorkTold.ts';

/**
 * What could be seen of a comparison that is wished for; null: too little is chosen yet. What was told before stays until the next answer is
 * there. Whoever ticks one lifter after the other asks once.
 */
export function useOutlook(wish: ComparisonWish | null) {
  const client = useQueryClient();
  const queryKey = [...clubKey, 'outlook', wish];
  const query = useQuery({
    queryKey,
    queryFn: async ({ signal }) => {
      await chosen(signal);
      forgetWork(client, 'comparison');
      return request<ComparisonOutlook>('POST', '/api/comparisons/outlook', wish, signal);
    },
    enabled: wish !== null,
    placeholderData: keepPreviousData,
  });
  return {
    outlook: wish === null ? undefined : query.data,
    error: query.error,
    /** What is shown is of what was chosen before. */
    isBehind: query.isPlaceholderData,
    isAsked: query.isFetching,
    /** Ends the work under way where nobody else waits for it; what was told before stays. */
    stop: () => void client.cancelQueries({ queryKey }),
    askAgain: () => void query.refetch(),
  };
}

/** A next tick follows within this, or none does (ms). */
const betweenTicksMs = 300;

/** When nothing else was chosen for a moment; fails as soon as something is. */
function chosen(signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(resolve, betweenTicksMs);
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
      reject(signal.reason);
    });
  });
}

/** What was foretold of a comparison, and what it shows by now; asked again whenever the club changes. */
export function useToldComparison(id: string) {
  const query = useQuery({
    queryKey: [...clubKey, 'comparison', id],
    queryFn: ({ signal }) =>
      requestAgain<ToldComparison>(`/api/comparisons/${encodeURIComponent(id)}`, signal),
  });
  return { told: query.data, error: query.error };
}

/** Draws who gets which way, and keeps it; gives back the id. */
export function useDraw(): (asked: NewComparison) => Promise<string> {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  return async (asked) => {
    forgetWork(client, 'comparison');
    const { comparison, seq } = await request<{ comparison: Comparison; seq: number }>(
      'POST',
      '/api/comparisons',
      asked,
    );
    await refreshClub(client);
    say(`Drawn: ${asked.title}.`, () => undo(seq));
    return comparison.id;
  };
}
