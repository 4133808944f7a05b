import { useId } from 'react';
import { planDifference } from '#contract/day/planDifference.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { numberLine } from '#contract/paper/numberLine.ts';
import { differenceSentence } from '#contract/words/differenceSentence.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { usePrescription } from '#web/api/usePrescription.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { Reworded } from '#web/print/Reworded.tsx';
import { Awaited } from './Awaited.tsx';
import { Changed } from './Changed.tsx';
import { Moved } from './Moved.tsx';
import { solvedSentence } from './solvedSentence.ts';
import type { DayDraft } from './useDayDraft.ts';
import type { Solving } from './useSolving.ts';

/** Which prescription is shown, how good it is, and the way to the earlier ones, which all stay. */
export function Solved({ draft, solving }: { draft: DayDraft; solving: Solving }) {
  const { prescription, latest, stale, look } = solving;
  const club = useClubSettings();
  const id = useId();
  if (prescription === null) return null;
  const isLatest = prescription.number === latest;
  return (
    <>
      <p className={stale && isLatest ? '' : 'quiet'}>
        {!isLatest && <strong>You are looking at an earlier number; paper shows the newest. </strong>}
        {numberLine(prescription, club.timeZone)}.{' '}
        <span className="solve-how">{solvedSentence(prescription)}</span>
      </p>
      {!isLatest && <AgainstLast earlier={prescription} />}
      {isLatest && stale && <Changed prescription={prescription} day={draft.day} />}
      {isLatest && !stale && (
        <Reworded
          key={`reworded ${prescription.number}`}
          prescription={prescription}
          day={draft.day}
          settle={draft.settle}
        />
      )}
      {isLatest && !stale && <Awaited prescription={prescription} />}
      {isLatest && !stale && <Moved key={prescription.number} prescription={prescription} />}
      {latest > 1 && (
        <p className="earlier">
          <label htmlFor={id}>Look at number</label>
          <select
            id={id}
            className="input"
            value={prescription.number}
            onChange={(event) => {
              const number = Number(event.target.value);
              look(number === latest ? null : number);
            }}
          >
            {Array.from({ length: latest }, (_, index) => latest - index).map((number) => (
              <option key={number} value={number}>
                {number === latest ? `${number}, the last` : number}
              </option>
            ))}
          </select>
        </p>
      )}
    </>
  );
}

/** What the last number has otherwise than the earlier one that is looked at. */
function AgainstLast({ earlier }: { earlier: SignedPrescription }) {
  const { mass } = useUnits();
  const { data: last } = usePrescription(earlier.dayId);
  const [before, after] = [earlier.document, last?.document ?? null];
  if (!last || before === null || after === null) return null;
  return (
    <p>
      Number {last.number} compared with it: {differenceSentence(planDifference(before, after), mass)}
    </p>
  );
}
