import { useId } from 'react';
import { numberLine } from '#contract/paper/numberLine.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { Awaited } from './Awaited.tsx';
import { Moved } from './Moved.tsx';
import { solvedSentence } from './solvedSentence.ts';
import type { Solving } from './useSolving.ts';

/** Which prescription is shown, how good it is, and the way to the earlier ones, which all stay. */
export function Solved({ solving }: { solving: Solving }) {
  const { prescription, latest, stale, look } = solving;
  const club = useClubSettings();
  const id = useId();
  if (prescription === null) return null;
  const isLatest = prescription.number === latest;
  return (
    <>
      <p className={stale && isLatest ? '' : 'quiet'}>
        {!isLatest && <strong>You look at an earlier one; paper shows the last. </strong>}
        {stale && isLatest && (
          <strong>
            The plan, the gear or what is known of its lifters was changed since: what is struck through does
            not stand. Work the loads out again.{' '}
          </strong>
        )}
        {numberLine(prescription, club.timeZone)}.{' '}
        <span className="solve-how">{solvedSentence(prescription)}</span>
      </p>
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
