import type { WrittenStep } from '#contract/paper/RackSheetModel.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import type { PlannedSet } from './plannedSets.ts';
import type { PlaceLog } from './useDayLog.ts';

/** Every set of a lifter as a button, step by step; what was done carries its mark and its word. */
export function SetButtons(props: {
  log: PlaceLog;
  chosen: number;
  mass: MassUnit;
  /** What each step is called on the wall. */
  written: readonly WrittenStep[];
  onPick: (index: number) => void;
}) {
  const { log, chosen, mass, written, onPick } = props;
  const { sets } = log.work;
  const steps = [...new Set(sets.map(({ step }) => step))];
  const button = (index: number, set: LoggedSet | null, planned: PlannedSet | null) => (
    <button
      key={index}
      type="button"
      className={`set-button${set ? ' done' : ''}`}
      aria-pressed={index === chosen}
      aria-label={`Set ${index + 1}: ${set ? doneWord(set) : planned ? 'not done yet' : 'one more'}`}
      onClick={() => onPick(index)}
    >
      <span>{index + 1}</span>
      <span className="set-mark">{set ? markOf(set) : planned ? '' : 'more'}</span>
    </button>
  );
  return (
    <div className="set-steps">
      {steps.map((step) => {
        const ofStep = sets.filter((set) => set.step === step);
        const [first] = ofStep;
        if (first === undefined) return null;
        return (
          <div key={step} className="set-step">
            <p className="small">
              <b>
                {written[step]?.bar} {mass}
              </b>{' '}
              × {first.reps}
            </p>
            <div className="set-row">
              {ofStep.map((set) => button(set.number - 1, log.done[set.number - 1] ?? null, set))}
            </div>
          </div>
        );
      })}
      <div className="set-step">
        <p className="small quiet">beyond the plan</p>
        <div className="set-row">
          {log.extra.map((set, i) => button(sets.length + i, set, null))}
          {button(sets.length + log.extra.length, null, null)}
        </div>
      </div>
    </div>
  );
}

/** "made", "1 of 2", "missed": a word each, so that nothing hangs on a colour. */
function doneWord({ reps, made }: LoggedSet): string {
  if (made === reps) return 'made';
  return made === 0 ? 'missed' : `${made} of ${reps}`;
}

function markOf(set: LoggedSet): string {
  return set.made === set.reps ? '✓' : `✕ ${set.made}/${set.reps}`;
}
