import {
  keepPreviousData,
  useInfiniteQuery,
  useMutation,
  useQuery,
  useQueryClient,
} from '@tanstack/react-query';
import type { LogDays } from '#contract/log/logDay.ts';
import type { GivenSet, LoggedSet } from '#contract/records/loggedSet.ts';
import { fetchSets, type SetsAsked } from './fetchSets.ts';
import { once } from './once.ts';
import { refreshClub } from './refreshClub.ts';
import { request, requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

/** Part of the log, as the club changes. What was there stays until the rest has come. */
export function useSets(asked: SetsAsked) {
  return useQuery({
    queryKey: [...clubKey, 'sets', asked],
    queryFn: ({ signal }) => fetchSets(asked, signal),
    placeholderData: keepPreviousData,
  });
}

/** Days of the log summed up, the newest first, a page after the other; asked again whenever the club changes. */
export function useLogDays(asked: SetsAsked) {
  return useInfiniteQuery({
    queryKey: [...clubKey, 'sets', 'days', asked],
    initialPageParam: '',
    queryFn: ({ pageParam: before, signal }) =>
      requestAgain<LogDays>(
        `/api/sets/days?${new URLSearchParams({ ...asked, ...(before && { before }) })}`,
        signal,
      ),
    getNextPageParam: ({ days, hasOlder }) => (hasOlder ? days.at(-1)?.doneOn : undefined),
    placeholderData: keepPreviousData,
  });
}

/** Writes to the log. Each way resolves when the screens show it, or rejects with a `RequestError`. */
export interface SetWriter {
  log: (set: GivenSet) => Promise<LoggedSet>;
  /** Many in their order, all or none. Resolves to the change, for undo. */
  logAll: (sets: readonly GivenSet[]) => Promise<number>;
  /** Takes a set out of everything that counts; it stays readable. */
  strike: (id: string) => Promise<void>;
  restore: (id: string) => Promise<void>;
  /** The log only grows: the corrected set takes the place of the mistaken one, which is struck, in one step. */
  correct: (mistaken: LoggedSet, set: GivenSet) => Promise<LoggedSet>;
  /** The same for many at once, all or none; a set that nothing takes the place of is only struck. Resolves to the change, for undo. */
  correctAll: (corrections: readonly { id: string; set: GivenSet | null }[]) => Promise<number>;
  busy: boolean;
}

export function useSetWriter(): SetWriter {
  const client = useQueryClient();
  const write = useMutation({
    mutationFn: (act: () => Promise<unknown>) => act(),
    onSettled: () => refreshClub(client),
  });
  const run = async <T>(act: () => Promise<T>) => (await write.mutateAsync(act)) as T;
  return {
    log: (set) => run(async () => (await add([set])).sets[0]!),
    logAll: (sets) => run(async () => (await add(sets)).seq),
    strike: (id) => run(() => turn(id, 'strike')),
    restore: (id) => run(() => turn(id, 'restore')),
    correct: (mistaken, set) => run(() => replace(mistaken.id, set)),
    correctAll: (corrections) => run(() => correctMany(corrections)),
    busy: write.isPending,
  };
}

function add(sets: readonly GivenSet[]): Promise<{ sets: LoggedSet[]; seq: number }> {
  return once(sets, (ids) =>
    request('POST', '/api/sets', { sets: sets.map((set, i) => ({ ...set, id: ids[i] })) }),
  );
}

async function replace(id: string, by: GivenSet): Promise<LoggedSet> {
  const path = `/api/sets/${encodeURIComponent(id)}/correct`;
  const { set } = await once([{ ...by, corrects: id }], (ids) =>
    request<{ set: LoggedSet }>('POST', path, { ...by, id: ids[0] }),
  );
  return set;
}

async function correctMany(corrections: Parameters<SetWriter['correctAll']>[0]): Promise<number> {
  const { seq } = await request<{ seq: number }>('POST', '/api/sets/correct', { corrections });
  return seq;
}

async function turn(id: string, way: 'strike' | 'restore'): Promise<void> {
  await request('POST', `/api/sets/${encodeURIComponent(id)}/${way}`);
}
