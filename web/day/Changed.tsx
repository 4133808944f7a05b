import { useState } from 'react';
import { planDifference } from '#contract/day/planDifference.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { Day } from '#contract/records/day.ts';
import { changedSentences } from '#contract/words/changedSentences.ts';
import { differenceSentence } from '#contract/words/differenceSentence.ts';
import { wordsSince } from '#reckon/day/wordsSince.ts';
import { useClub } from '#web/api/useClub.ts';
import { useChanged, useOutlook } from '#web/api/usePrescription.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { lifterName } from './lifterName.ts';

/** What was changed since the loads were worked out, by name, and what working them out again would come to, before anybody does. */
export function Changed({ prescription, day }: { prescription: SignedPrescription; day: Day }) {
  const { dayId } = prescription;
  const club = useClub();
  const { mass } = useUnits();
  const outlook = useOutlook(dayId);
  const [seen, setSeen] = useState<string | null>(null);
  const called = {
    lifter: (id: string) => lifterName(club.lifter, id),
    pair: (id: string) => club.bandPair.find((pair) => pair.id === id)?.label ?? 'A pair no longer kept',
  };
  const plan = prescription.document;
  const reworded = plan === null ? [] : wordsSince(plan, club, day).map(({ sentence }) => sentence);
  const changes = [...changedSentences(useChanged(dayId, true), called, mass), ...reworded];
  const look = async () => {
    try {
      const { document } = await outlook.mutateAsync();
      setSeen(plan === null ? null : differenceSentence(planDifference(plan, document), mass));
    } catch (error) {
      setSeen(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <>
      <p>
        <strong>
          Changed since the loads were worked out: {changes.join(' ') || 'what they rest on.'} What is struck
          through no longer holds.
        </strong>{' '}
        <button type="button" className="plain" disabled={outlook.isPending} onClick={() => void look()}>
          {outlook.isPending ? 'Looking' : 'See what it would come to'}
        </button>
      </p>
      {seen !== null && <p>Worked out again: {seen}</p>}
    </>
  );
}
