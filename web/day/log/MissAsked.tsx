import { type MissStop, missStops } from '#web/setup/missStops.ts';
import type { StartOnRange } from '#web/setup/startOnRange.ts';

/** A miss before it is written down: one tap says where it stopped, and the set is on record. */
export function MissAsked(props: {
  reps: number;
  made: number;
  start: StartOnRange | null;
  busy: boolean;
  /** Null: nobody saw. */
  onAnswer: (stoppedAtS: number | null) => void;
  onBack: () => void;
}) {
  const { reps, made, busy, onAnswer } = props;
  const answers: { s: number | null; word: string }[] = [...missStops(props.start).toReversed(), nobodySaw];
  return (
    <fieldset className="miss-asked stack">
      <legend className="set-kept">
        {made === 0 ? 'Missed' : `Made ${made} of ${reps}`}: where did the bar stop?
      </legend>
      <div className="made-row">
        {answers.map(({ s, word }) => (
          <button key={word} type="button" disabled={busy} onClick={() => onAnswer(s)}>
            {word}
          </button>
        ))}
      </div>
      <div className="row">
        <p className="small quiet">
          The set is written down with your answer; if you go on without one, as seen by nobody.
        </p>
        <button type="button" className="plain" onClick={props.onBack}>
          Back
        </button>
      </div>
    </fieldset>
  );
}

const nobodySaw: Omit<MissStop, 's'> & { s: null } = { s: null, word: 'nobody saw' };
