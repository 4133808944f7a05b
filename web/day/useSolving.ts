import { useMemo, useState } from 'react';
import { planOf } from '#contract/day/planOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { planBasis } from '#reckon/day/planBasis.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEarlierPrescription, usePrescription, useSolveDay } from '#web/api/usePrescription.ts';
import { forgetTried } from './tried.ts';
import type { DayDraft } from './useDayDraft.ts';

export interface Solving {
  /** What is shown: what was worked out last, or an earlier one that the coach looks at; null: nothing yet. */
  prescription: SignedPrescription | null;
  /** The number of the last one; 0: nothing yet. */
  latest: number;
  /** Shows an earlier one; null: the last. */
  look: (number: number | null) => void;
  busy: boolean;
  /** Ends the work under way; nothing is kept of it. */
  stop: () => void;
  /** Why it could not be worked out, in one sentence. */
  wrong: string | null;
  /** The day, the gear or what is known of its lifters was changed since. */
  stale: boolean;
  solve: () => Promise<void>;
}

/** Works the day's loads out, saving what is not saved first. */
export function useSolving(draft: DayDraft): Solving {
  const records = useClub();
  const { data: last } = usePrescription(draft.day.id);
  const [lookedAt, look] = useState<number | null>(null);
  const { data: earlier } = useEarlierPrescription(draft.day.id, lookedAt);
  const shown = (lookedAt === null ? last : earlier) ?? null;
  const solveDay = useSolveDay(draft.day.id);
  const [waiting, setWaiting] = useState<AbortController | null>(null);
  const plan = useMemo(() => (last ? planOf(last) : null), [last]);
  // Reads the whole club, so not at every letter that is typed.
  const basis = useMemo(() => planBasis(records, draft.day), [records, draft.day]);
  const solve = async () => {
    const stopper = new AbortController();
    setWaiting(stopper);
    try {
      if (!(await draft.settle())) return;
      await solveDay.mutateAsync(stopper.signal);
      forgetTried(draft.day.id);
      look(null);
    } catch {
      // The mutation keeps the sentence.
    } finally {
      setWaiting(null);
    }
  };
  return {
    prescription: shown,
    latest: last?.number ?? 0,
    look,
    busy: waiting !== null,
    stop: () => waiting?.abort(),
    wrong: solveDay.error?.name === 'AbortError' ? null : (solveDay.error?.message ?? null),
    stale: plan !== null && plan.basis !== basis,
    solve,
  };
}
