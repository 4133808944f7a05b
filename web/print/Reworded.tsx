import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import type { Day } from '#contract/records/day.ts';
import { counted } from '#contract/words/counted.ts';
import { wordsSince } from '#reckon/day/wordsSince.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRetell } from '#web/api/usePrescription.ts';

/** So many are said one by one. */
const mostSaid = 2;

/**
 * Says which notes and names the last number words otherwise than the coach does now, and offers them as another number with the
 * same bars: paper on the wall and a later print of the same number never differ.
 */
export function Reworded(props: {
  prescription: SignedPrescription;
  /** As the coach sees it, saved or not. */
  day: Day;
  /** Saves what is not saved yet; false: that cannot be. */
  settle?: () => Promise<boolean>;
}) {
  const { prescription, day, settle } = props;
  const records = useClub();
  const retell = useRetell(day.id, 'words');
  const plan = prescription.document;
  const sentences = plan === null ? [] : wordsSince(plan, records, day).map(({ sentence }) => sentence);
  if (sentences.length === 0) return null;
  const more = sentences.length - mostSaid;
  const take = async () => {
    if (settle === undefined || (await settle())) retell.mutate(prescription.number);
  };
  return (
    <>
      <p className="offer screen-only">
        <strong>
          {sentences.slice(0, mostSaid).join(' ')}
          {more > 0 && ` And ${counted(more, 'more change')} of this kind.`}
        </strong>{' '}
        <button type="button" className="plain" disabled={retell.isPending} onClick={() => void take()}>
          Put it on the papers
        </button>{' '}
        as number {prescription.number + 1}; number {prescription.number} and the bars stay.
      </p>
      {retell.error && (
        <p className="field-error" role="alert">
          {retell.error.message}
        </p>
      )}
    </>
  );
}
