import { useMemo, useState } from 'react';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEarlierPrescription, usePrescription, useSolveDay } from '#web/api/usePrescription.ts';
import { useLoaded } from '#web/parts/useLoaded.ts';
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

/** Brings all kinds of record with their shapes along: the server says for the first page whether its plan stands. */
const loadPlanBasis = () => import('#reckon/day/planBasis.ts').then((m) => m.planBasis);

/** Works the day's loads out, saving what is not saved first. */
export function useSolving(draft: DayDraft): Solving {
  const records = useClub();
  const { data: last } = usePrescription(draft.day.id);
  const [lookedAt, look] = useState<number | null>(null);
  const { data: earlier } = useEarlierPrescription(draft.day.id, lookedAt);
  const shown = (lookedAt === null ? last : earlier) ?? null;
  const solveDay = useSolveDay(draft.day.id);
  const [waiting, setWaiting] = useState<AbortController | null>(null);
  const plan = last?.document ?? null;
  const planBasis = useLoaded(loadPlanBasis);
  // Reads the whole club, so not at every letter that is typed.
  const ownBasis = useMemo(() => planBasis?.(records, draft.day), [planBasis, records, draft.day]);
  const basis = ownBasis ?? last?.basisNow;
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
