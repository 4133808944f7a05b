import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { RackFields } from '#web/setup/RackFields.tsx';
import { StartWayField } from '#web/setup/StartWayField.tsx';
import type { Trial } from './Trial.ts';

/** What one chooses for a trial: lifter, lift, start, rack, bands, chains. */
export function TrialChoices(props: {
  club: ClubRecords;
  trial: Trial;
  onChange: (trial: Trial) => void;
  /** Lifters to choose from; null where the page's own lifter is meant. */
  lifters: readonly { value: string; word: string }[] | null;
}) {
  const { club, trial, onChange } = props;
  const { start, lift } = trial;
  const set = (change: Partial<Trial>) => onChange({ ...trial, ...change });
  return (
    <div className="stack trial-choices">
      <div className="fields">
        {props.lifters && (
          <SelectField
            label="Lifter"
            value={trial.lifterId}
            options={props.lifters}
            onChange={(lifterId) => set({ lifterId })}
          />
        )}
        <SelectField
          label="Lift"
          value={lift}
          options={liftWords}
          onChange={(next) => onChange(withLift(trial, next, club))}
        />
        <StartWayField lift={lift} start={start} onChange={(next) => set({ start: next })} />
        <RackFields lift={lift} setup={trial} onChange={set} />
      </div>
    </div>
  );
}

/** Another lift keeps lifter and bar, and takes off what the rack cannot hang for it. */
function withLift(trial: Trial, lift: Lift, club: ClubRecords): Trial {
  const rack = club.rack.find((candidate) => candidate.id === trial.rackId);
  const rackId = rack?.lifts.includes(lift)
    ? rack.id
    : (club.rack.find((r) => r.lifts.includes(lift))?.id ?? null);
  return { ...trial, lift, rackId, start: { way: 'free', heightM: null }, bands: [], chains: [] };
}
