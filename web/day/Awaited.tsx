import { namesOf } from '#contract/day/namesOf.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { firstAndMore } from '#contract/words/firstAndMore.ts';
import { likelyToMiss } from '#contract/words/likelyToMiss.ts';
import { logsWorkedOut } from '#contract/words/logsWorkedOut.ts';
import { useRetell, useRetelling, useShowLast } from '#web/api/usePrescription.ts';

/**
 * Says whose bests stand in while their log is being worked out, then offers to tell speeds and chances by it. What stands under a
 * number never changes by itself, so that a sheet on the wall and the screen say the same: the offer is another number.
 */
export function Awaited({ prescription }: { prescription: SignedPrescription }) {
  const { number, dayId } = prescription;
  const offer = useRetelling(dayId);
  const retell = useRetell(dayId, 'log');
  const showLast = useShowLast(dayId);
  const plan = prescription.document;
  if (plan === null || offer === undefined || offer.number === null || offer.number < number) return null;
  if (offer.number > number) {
    return retell.isPending ? null : (
      <p>
        <strong>Number {offer.number} of this day has since been made on another screen.</strong>{' '}
        <button type="button" className="plain" onClick={showLast}>
          Show number {offer.number}
        </button>
      </p>
    );
  }
  if (offer.awaited.length > 0) {
    const names = namesOf(plan, offer.awaited);
    const goBy =
      names.length === 1
        ? 'goes by the best until the log is ready'
        : 'go by their bests until their logs are ready';
    return (
      <p className="quiet">
        {firstAndMore(names)} {goBy}.
      </p>
    );
  }
  if (offer.lifters.length === 0) return null;
  return (
    <>
      <p className="offer">
        <strong>
          {likelyToMiss(namesOf(plan, offer.likelyToMiss)) ||
            `${logsWorkedOut(namesOf(plan, offer.lifters))}.`}
        </strong>{' '}
        <button
          type="button"
          className="plain"
          disabled={retell.isPending}
          onClick={() => retell.mutate(number)}
        >
          Give speeds and chances by the log
        </button>{' '}
        as number {number + 1}; the bars stay.
      </p>
      {retell.error && (
        <p className="field-error" role="alert">
          {retell.error.message}
        </p>
      )}
    </>
  );
}
