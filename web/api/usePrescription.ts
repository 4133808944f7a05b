import {
  type QueryClient,
  queryOptions,
  useMutation,
  useQuery,
  useQueryClient,
  useSuspenseQuery,
} from '@tanstack/react-query';
import type { ChangedRecord } from '#contract/day/changedRecord.ts';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { SignedPrescription, StandingPrescription } from '#contract/day/signedPrescription.ts';
import { request } from './request.ts';
import { clubKey } from './useClub.ts';
import { forgetWork } from './useWorkTold.ts';

const prescriptionKey = (dayId: string) => ['prescription', dayId] as const;
const retellingKey = (dayId: string) => [...clubKey, 'retelling', dayId] as const;

/**
 * What was solved last for a day, as it was kept; null where nothing was solved yet. Waits (suspends) until it is there. A screen that is
 * opened asks again, for somebody else may have solved it since; one that is open keeps what it shows until `useShowLast`.
 */
export function usePrescription(dayId: string) {
  return useSuspenseQuery(lastPrescription(dayId));
}

/** For `usePrescription`, and for whoever asks before a screen is there. */
export const lastPrescription = (dayId: string) =>
  queryOptions({
    queryKey: prescriptionKey(dayId),
    // What was asked for just now, for the screen that opens, is not asked for twice.
    staleTime: 1000,
    refetchOnWindowFocus: false,
    refetchOnReconnect: false,
    queryFn: () =>
      request<StandingPrescription | null>('GET', `/api/days/${encodeURIComponent(dayId)}/prescription`),
  });

/** An earlier prescription of a day by its number; nothing is asked while the number is null. */
export function useEarlierPrescription(dayId: string, number: number | null) {
  return useQuery({
    queryKey: [...prescriptionKey(dayId), number],
    enabled: number !== null,
    queryFn: () =>
      request<SignedPrescription>('GET', `/api/days/${encodeURIComponent(dayId)}/prescriptions/${number}`),
  });
}

/** Ids of lifters: of whom the log could tell anew in the last plan, who of them is likely to miss by it, and whose log is awaited. */
interface Retelling {
  number: number | null;
  lifters: string[];
  likelyToMiss: string[];
  awaited: string[];
}

/** Asked again whenever the club changes or estimates become better: also when one comes that was awaited. */
export function useRetelling(dayId: string): Retelling | undefined {
  const { data } = useQuery({
    queryKey: retellingKey(dayId),
    queryFn: () => request<Retelling>('GET', `/api/days/${encodeURIComponent(dayId)}/retelling`),
  });
  return data;
}

/** Whose strength the log has moved since a day was solved that has not begun; asked again as above. */
export function useMoved(dayId: string): string[] {
  const { data } = useQuery({
    queryKey: [...clubKey, 'moved', dayId],
    queryFn: () =>
      request<{ moved: string[]; awaited: string[] }>('GET', `/api/days/${encodeURIComponent(dayId)}/moved`),
  });
  return data?.moved ?? [];
}

/** Which records were changed since a day was solved last; asked while that is wanted, and again whenever the club changes. */
export function useChanged(dayId: string, wanted: boolean): ChangedRecord[] {
  const { data } = useQuery({
    queryKey: [...clubKey, 'changed', dayId],
    enabled: wanted,
    queryFn: () =>
      request<{ changes: ChangedRecord[] }>('GET', `/api/days/${encodeURIComponent(dayId)}/changed`),
  });
  return data?.changes ?? [];
}

/** What solving a day would come to now; nothing is kept. */
export function useOutlook(dayId: string) {
  return useMutation({
    mutationFn: () =>
      request<{ document: DayPlan }>('POST', `/api/days/${encodeURIComponent(dayId)}/outlook`),
  });
}

/** Solves a day now; its prescription follows, unless it is stopped by the signal. */
export function useSolveDay(dayId: string) {
  const client = useQueryClient();
  return useMutation({
    onMutate: () => forgetWork(client, 'day', dayId),
    mutationFn: (signal: AbortSignal) =>
      request<StandingPrescription>(
        'POST',
        `/api/days/${encodeURIComponent(dayId)}/solve`,
        undefined,
        signal,
      ),
    onSuccess: (solved) => showAsLast(client, solved),
  });
}

/** Tells the last prescription anew under a number of its own: speeds and chances by the log, or its words as they are now. */
export function useRetell(dayId: string, by: 'log' | 'words') {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (number: number) =>
      request<StandingPrescription>('POST', `/api/days/${encodeURIComponent(dayId)}/retelling`, {
        number,
        by,
      }),
    onSuccess: (told) => showAsLast(client, told),
  });
}

/** Fetches the last prescription of a day, where another screen has made one. */
export function useShowLast(dayId: string): () => void {
  const client = useQueryClient();
  return () => void client.invalidateQueries({ queryKey: prescriptionKey(dayId), exact: true });
}

function showAsLast(client: QueryClient, prescription: StandingPrescription): void {
  const { dayId } = prescription;
  client.setQueryData(prescriptionKey(dayId), prescription);
  void client.invalidateQueries({ queryKey: retellingKey(dayId) });
  client.removeQueries({ queryKey: [...clubKey, 'moved', dayId] });
}
