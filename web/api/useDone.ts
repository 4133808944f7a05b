import { useInfiniteQuery } from '@tanstack/react-query';
import type { DoneChanges } from '#contract/changes/doneChange.ts';
import { requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

export const doneKey = [...clubKey, 'done'] as const;

/** What was done, newest first, a page after the other; asked again whenever the club changes. */
export function useDone() {
  return useInfiniteQuery({
    queryKey: doneKey,
    initialPageParam: null as number | null,
    queryFn: ({ pageParam, signal }) =>
      requestAgain<DoneChanges>(`/api/changes${pageParam === null ? '' : `?before=${pageParam}`}`, signal),
    getNextPageParam: ({ changes, hasOlder }) => (hasOlder ? changes.at(-1)?.seq : undefined),
  });
}
