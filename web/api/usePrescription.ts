import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Prescription } from '#contract/records/prescription.ts';
import { request, requestAgain } from './request.ts';
import { clubKey } from './useClub.ts';

const prescriptionKey = (dayId: string) => ['prescription', dayId] as const;
const expectedKey = (dayId: string) => [...clubKey, 'expected', dayId] as const;

/** A plan told anew by the log; null where there is nothing to add to what was solved. */
interface Expected {
  number: number | null;
  document: unknown;
  awaited: string[];
}

/**
 * What was solved last for a day, with what the log has come to say of its bars since; null where nothing was solved yet. The
 * log is asked again whenever the club changes or estimates become better, and until nobody is awaited.
 */
export function usePrescription(dayId: string): { data: Prescription | null | undefined } {
  const { data: kept } = useQuery({
    queryKey: prescriptionKey(dayId),
    queryFn: () => request<Prescription | null>('GET', `/api/days/${encodeURIComponent(dayId)}/prescription`),
  });
  const { data: now } = useQuery({
    queryKey: expectedKey(dayId),
    enabled: kept != null,
    queryFn: () => requestAgain<Expected>(`/api/days/${encodeURIComponent(dayId)}/expected`),
    refetchInterval: ({ state }) => ((state.data?.awaited.length ?? 0) > 0 ? askAgainMs : false),
  });
  const data = useMemo(
    () => (kept && now?.document && now.number === kept.number ? { ...kept, document: now.document } : kept),
    [kept, now],
  );
  return { data };
}

/** An earlier prescription of a day by its number; nothing is asked while the number is null. */
export function useEarlierPrescription(dayId: string, number: number | null) {
  return useQuery({
    queryKey: [...prescriptionKey(dayId), number],
    enabled: number !== null,
    queryFn: () =>
      request<Prescription>('GET', `/api/days/${encodeURIComponent(dayId)}/prescriptions/${number}`),
  });
}

/** Whose log is still being worked out for a day; asked until nobody is left. Undefined: not known yet. */
export function useAwaited(dayId: string, wanted: boolean): string[] | undefined {
  const { data } = useQuery({
    queryKey: ['awaited', dayId],
    enabled: wanted,
    queryFn: () => request<{ awaited: string[] }>('GET', `/api/days/${encodeURIComponent(dayId)}/awaited`),
    refetchInterval: ({ state }) => (state.data?.awaited.length === 0 ? false : askAgainMs),
    gcTime: 0,
  });
  return data?.awaited;
}

/** Whose strength the log has moved since a day was solved that has not begun; asked again whenever the club changes. */
export function useMoved(dayId: string): string[] {
  const { data } = useQuery({
    queryKey: [...clubKey, 'moved', dayId],
    queryFn: () =>
      request<{ moved: string[]; awaited: string[] }>('GET', `/api/days/${encodeURIComponent(dayId)}/moved`),
    refetchInterval: ({ state }) => ((state.data?.awaited.length ?? 0) > 0 ? askAgainMs : false),
  });
  return data?.moved ?? [];
}

const askAgainMs = 1000;

/** Solves a day now; its prescription follows. */
export function useSolveDay(dayId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => request<Prescription>('POST', `/api/days/${encodeURIComponent(dayId)}/solve`),
    onSuccess: (solved) => {
      client.setQueryData(prescriptionKey(dayId), solved);
      void client.invalidateQueries({ queryKey: expectedKey(dayId) });
      client.removeQueries({ queryKey: ['awaited', dayId] });
      client.removeQueries({ queryKey: [...clubKey, 'moved', dayId] });
    },
  });
}
