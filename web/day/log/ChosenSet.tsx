import { useState } from 'react';
import { effortLine } from '#contract/paper/effortWords.ts';
import type { WrittenStep } from '#contract/paper/RackSheetModel.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { TextField } from '#web/parts/TextField.tsx';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { speedsOf, wrongSpeeds } from '#web/setup/SpeedsField.tsx';
import type { SetDraft } from '#web/setup/setDraft.ts';
import { repsWords, seenWords, setupWords } from '#web/setup/setWords.ts';

const speedLabel = 'Mean speed';

/** The set that comes next, large, and one button for each number of reps that can have been made. */
export function ChosenNext(props: {
  draft: SetDraft;
  number: number;
  of: number;
  /** How its step is written, and what it is expected to do; null beyond the plan. */
  step: WrittenStep | null;
  club: ClubRecords;
  units: Units;
  busy: boolean;
  /** How many reps, and the mean speeds that were typed beside them. */
  onMade: (made: number, meanSpeedsMps: number[]) => void;
  onDetails: () => void;
}) {
  const { draft, step, club, units } = props;
  const [speeds, setSpeeds] = useState('');
  // Speeds are judged by the reps that were tapped; until then by all of them.
  const [tapped, setTapped] = useState(draft.reps);
  const { reps, setup } = draft;
  const barKg = setup.barKg ?? 0;
  const fewer = Array.from({ length: reps }, (_, i) => reps - 1 - i);
  const made = (count: number) => ({
    type: 'button' as const,
    disabled: props.busy,
    // The second click of a double tap would put the next set on record.
    onClick: (event: { detail: number }) => {
      if (event.detail > 1) return;
      setTapped(count);
      if (wrongSpeeds(speedLabel, speeds, count) === null) props.onMade(count, speedsOf(speeds));
    },
  });
  return (
    <div className="stack">
      <div>
        <p className="small quiet">
          {props.number <= props.of ? `Set ${props.number} of ${props.of}` : 'One more than planned'}
        </p>
        <p className="set-lead numeral">
          {step?.bar ?? oneDecimal(barKg, units.mass)}
          <span className="unit">{units.mass}</span> × {reps}
        </p>
        {step?.trueBar && (
          <p className="quiet">
            goes on record as {step.trueBar} {units.mass}
          </p>
        )}
        <p>{setupWords(club, draft, units)}</p>
        {step && <p className="quiet">Expected: {effortLine(step.effort)}.</p>}
      </div>
      <div className="made-row">
        <button {...made(reps)} className="strong made-all">
          {reps === 1 ? 'Made it' : `Made all ${reps}`}
        </button>
        {fewer.map((count) => (
          <button key={count} {...made(count)} className="made-fewer">
            {count === 0 ? (reps === 1 ? 'Missed it' : 'Made none') : `Made ${count}`}
          </button>
        ))}
      </div>
      <div className="speed-beside">
        <TextField
          label={`${speedLabel}, m/s, if measured`}
          value={speeds}
          error={wrongSpeeds(speedLabel, speeds, tapped)}
          onChange={(text) => {
            setTapped(reps);
            setSpeeds(text);
          }}
        />
        <button type="button" className="plain" onClick={props.onDetails}>
          Something else to write down
        </button>
      </div>
    </div>
  );
}

/** A set that is on record: what it was, and the ways to add to it or take it back. */
export function ChosenDone(props: {
  set: LoggedSet;
  number: number;
  club: ClubRecords;
  units: Units;
  busy: boolean;
  onDetails: () => void;
  onStrike: () => void;
}) {
  const { set, club, units } = props;
  const seen = seenWords(set);
  const missed = set.made < set.reps;
  return (
    <div className="stack">
      <div>
        <p className="small quiet">Set {props.number} is on record</p>
        <p className="set-kept">{repsWords(set, units)}</p>
        <p>{setupWords(club, set, units)}</p>
        {seen && <p>{seen}</p>}
        {set.note && <p className="quiet">{set.note}</p>}
      </div>
      <div className="row">
        <button type="button" onClick={props.onDetails}>
          {missed && set.stoppedAtS === null
            ? 'Where did the miss stop, and more'
            : 'Change it, or add to it'}
        </button>
        <button type="button" disabled={props.busy} onClick={props.onStrike}>
          Strike this set
        </button>
      </div>
    </div>
  );
}
