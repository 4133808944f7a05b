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

/** What could be seen of a comparison that is wished for; null: too little is chosen yet. What was told before stays until the next answer is there. */
export function useOutlook(wish: ComparisonWish | null) {
  const query = useQuery({
    queryKey: [...clubKey, 'outlook', wish],
    queryFn: ({ signal }) => request<ComparisonOutlook>('POST', '/api/comparisons/outlook', wish, signal),
    enabled: wish !== null,
    placeholderData: keepPreviousData,
  });
  return {
    outlook: wish === null ? undefined : query.data,
    error: query.error,
    /** What is shown is of what was chosen before. */
    isBehind: query.isPlaceholderData,
  };
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
