import { useState } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { alikeWords } from '#web/setup/alikeWords.ts';
import { seenWords } from '#web/setup/setWords.ts';
import { BarForm } from './BarForm.tsx';
import { LoadCell, SetupLink, SpeedCell } from './SetCells.tsx';
import { SetLine } from './SetLine.tsx';
import { useSetActs } from './useSetActs.ts';

/** Alike sets on one line: "8 × 3 at 67.5 kg", to be changed and struck together, or opened one by one. */
export function AlikeLine(props: {
  /** Two or more. */
  sets: readonly LoggedSet[];
  setup: string;
  /** What is to be said of a set beside how it went. */
  besideOf: (set: LoggedSet) => string[];
}) {
  const { sets, setup, besideOf } = props;
  const units = useUnits();
  const acts = useSetActs();
  const [open, setOpen] = useState(false);
  const [changing, setChanging] = useState(false);
  const first = sets[0]!;
  const orders = `${first.order} to ${sets.at(-1)!.order}`;
  const what = `sets ${orders}, ${alikeWords(sets, units.mass)}`;
  const struck = first.struckAt !== null;
  // Speeds stand in the picture.
  const seen = new Set(
    sets.flatMap((set) => [seenWords({ ...set, meanSpeedsMps: [], peakSpeedsMps: [] }), ...besideOf(set)]),
  );
  seen.delete('');
  return (
    <li className={`set-line${struck ? ' struck' : ''}`}>
      <span className="quiet set-order">
        {first.order}–{sets.at(-1)!.order}
      </span>
      <span className="set-reps">{alikeWords(sets, units.mass)}</span>
      <span className="set-setup">
        <SetupLink set={first}>{setup}</SetupLink>
        {seen.size > 0 && <span className="small quiet set-seen">{[...seen].join('; ')}</span>}
      </span>
      <LoadCell set={first} />
      <SpeedCell sets={sets} />
      <span className="set-act">
        {struck && <span className="mark">struck</span>}
        {!struck && (
          <>
            <button
              type="button"
              className="plain"
              aria-label={`Change the bar of ${what}`}
              aria-expanded={changing}
              onClick={() => setChanging(!changing)}
            >
              Change
            </button>
            <button
              type="button"
              className="plain"
              disabled={acts.busy}
              aria-label={`Strike ${what}`}
              onClick={() => void acts.strike(sets, what)}
            >
              Strike
            </button>
          </>
        )}
        <button
          type="button"
          className="plain"
          aria-label={`${what}, one by one`}
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {open ? 'Close' : 'Each'}
        </button>
      </span>
      {changing && !struck && (
        <div className="set-form">
          <BarForm
            title={`Change the bar of ${what}`}
            barKg={first.setup.barKg}
            onSave={async (barKg) => {
              await acts.changeBar(sets, barKg, what);
              setChanging(false);
            }}
            onLeave={() => setChanging(false)}
          />
        </div>
      )}
      {open && (
        <ol className="set-each">
          {sets.map((set) => (
            <SetLine key={set.id} set={set} setup={null} beside={besideOf(set)} />
          ))}
        </ol>
      )}
    </li>
  );
}
