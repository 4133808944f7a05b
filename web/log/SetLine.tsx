import { useState } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { SetForm } from '#web/setup/SetForm.tsx';
import { givenAgain } from '#web/setup/setDraft.ts';
import { repsWords, seenWords } from '#web/setup/setWords.ts';
import { LoadCell, SetupLink, SpeedCell } from './SetCells.tsx';
import { useSetActs } from './useSetActs.ts';

/** One set of the log on a line, to be changed, struck as a mistake and brought back. */
export function SetLine(props: {
  set: LoggedSet;
  /** The setup in words; null: the line above has said it, with the load. */
  setup: string | null;
  /** What the line adds of the set beside how it went: at a meet, its place, its note. */
  beside: readonly string[];
}) {
  const { set, setup } = props;
  const units = useUnits();
  const acts = useSetActs();
  const [changing, setChanging] = useState(false);
  const seen = [seenWords(set), ...props.beside].filter(Boolean);
  const struck = set.struckAt !== null;
  const what = `set ${set.order}, ${repsWords(set, units)}`;
  return (
    <li className={`set-line${struck ? ' struck' : ''}`}>
      <span className="quiet set-order">{set.order}</span>
      <span className="set-reps">{repsWords(set, units)}</span>
      <span className="set-setup">
        {setup !== null && <SetupLink set={set}>{setup}</SetupLink>}
        {seen.length > 0 && <span className="small quiet set-seen">{seen.join('; ')}</span>}
      </span>
      {setup !== null && <LoadCell set={set} />}
      <SpeedCell sets={[set]} />
      <span className="set-act">
        {struck && <span className="mark">struck</span>}
        {!struck && (
          <button
            type="button"
            className="plain"
            aria-label={`Change ${what}`}
            aria-expanded={changing}
            onClick={() => setChanging(!changing)}
          >
            Change
          </button>
        )}
        <button
          type="button"
          className="plain"
          disabled={acts.busy}
          aria-label={struck ? `Bring back ${what}` : `Strike ${what}`}
          onClick={() => void (struck ? acts.restore(set) : acts.strike([set], what))}
        >
          {struck ? 'Bring back' : 'Strike'}
        </button>
      </span>
      {changing && !struck && (
        <div className="set-form">
          <SetForm
            title={`Change ${what}`}
            initial={givenAgain(set)}
            ofDay={false}
            leaveWord="Leave unchanged"
            onLeave={() => setChanging(false)}
            onSave={async (given) => {
              await acts.correct(set, given);
              setChanging(false);
            }}
          />
        </div>
      )}
    </li>
  );
}
