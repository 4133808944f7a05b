import { namesOf } from '#contract/day/namesOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { firstAndMore } from '#contract/words/firstAndMore.ts';
import { useMoved } from '#web/api/usePrescription.ts';

/** Says whose strength the log has moved since the day was worked out, as long as it has not begun. */
export function Moved({ prescription }: { prescription: SignedPrescription }) {
  const moved = useMoved(prescription.dayId);
  const plan = prescription.document;
  const whose = plan === null ? '' : firstAndMore(namesOf(plan, moved));
  if (whose === '') return null;
  return (
    <p>
      <strong>
        Sets logged since have moved the strength of {whose} by more than 1 %: work the loads out again to use
        it.
      </strong>
    </p>
  );
}
