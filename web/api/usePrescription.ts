import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Prescription } from '#contract/records/prescription.ts';
import { RequestError, request } from './request.ts';

const prescriptionKey = (dayId: string) => ['prescription', dayId] as const;

/** What was solved last for a day; null where nothing was solved yet. */
export function usePrescription(dayId: string) {
  return useQuery({
    queryKey: prescriptionKey(dayId),
    queryFn: () =>
      request<Prescription>('GET', `/api/days/${encodeURIComponent(dayId)}/prescription`).catch(
        (error: unknown) => {
          if (error instanceof RequestError && error.status === 404) return null;
          throw error;
        },
      ),
  });
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

/** Solves a day now; its prescription follows. */
export function useSolveDay(dayId: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => request<Prescription>('POST', `/api/days/${encodeURIComponent(dayId)}/solve`),
    onSuccess: (solved) => client.setQueryData(prescriptionKey(dayId), solved),
  });
}
