import { useState } from 'react';
import type { Prescription } from '#contract/records/prescription.ts';
import { usePrescription, useSolveDay } from '#web/api/usePrescription.ts';
import type { DayDraft } from './useDayDraft.ts';

export interface Solving {
  /** What was worked out last; null: nothing yet. */
  prescription: Prescription | null;
  busy: boolean;
  /** Why it could not be worked out, in one sentence. */
  wrong: string | null;
  /** The day was changed since. */
  stale: boolean;
  solve: () => Promise<void>;
}

/** Works the day's loads out, saving what is not saved first. */
export function useSolving(draft: DayDraft): Solving {
  const { data } = usePrescription(draft.day.id);
  const solveDay = useSolveDay(draft.day.id);
  const [waiting, setWaiting] = useState(false);
  const solve = async () => {
    setWaiting(true);
    try {
      if (await draft.settle()) await solveDay.mutateAsync();
    } catch {
      // The mutation keeps the sentence.
    } finally {
      setWaiting(false);
    }
  };
  return {
    prescription: data ?? null,
    busy: waiting,
    wrong: solveDay.error?.message ?? null,
    stale: false,
    solve,
  };
}
