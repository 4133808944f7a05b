import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { hasHeight, liftWords, startWords } from '#web/parts/liftWords.ts';
import { RangeField } from '#web/parts/RangeField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BandFields } from './BandFields.tsx';
import { heightWord, usualHeightM } from './StartFields.tsx';
import type { Trial } from './Trial.ts';

/** Everything of a trial that a coach can turn: lifter, rack, lift, start, bar, bands, chains. */
export function TrialControls(props: {
  club: ClubRecords;
  trial: Trial;
  onChange: (trial: Trial) => void;
  /** Heaviest bar that the slider reaches. */
  toKg: number;
  /** Lifters to choose from; left out where the page's own lifter is meant. */
  lifters?: readonly { value: string; word: string }[];
}) {
  const { club, trial, onChange } = props;
  const units = useUnits();
  const { start, lift } = trial;
  const set = (change: Partial<Trial>) => onChange({ ...trial, ...change });
  const racks = club.rack.filter((rack) => rack.lifts.includes(lift));
  return (
    <div className="stack">
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
        <SelectField
          label="Start"
          value={start.way}
          options={startWords(lift)}
          onChange={(way) => set({ start: { way, heightM: hasHeight(way) ? usualHeightM[way] : null } })}
        />
        <SelectField
          label="Rack"
          value={trial.rackId ?? ''}
          options={racks.map((rack) => ({ value: rack.id, word: rack.label }))}
          onChange={(rackId) => set({ rackId, bands: [], chains: [] })}
        />
      </div>
      <RangeField
        label="On the bar"
        valueSi={trial.barKg}
        unit={units.mass}
        minSi={0}
        maxSi={props.toKg}
        stepSi={0.5}
        onChange={(barKg) => set({ barKg })}
      />
      {start.heightM !== null && (
        <RangeField
          label={heightWord[start.way]}
          valueSi={start.heightM}
          unit={units.length}
          minSi={startReach(start)[0]}
          maxSi={startReach(start)[1]}
          stepSi={0.005}
          onChange={(heightM) => set({ start: { ...start, heightM } })}
        />
      )}
      <BandFields club={club} rackId={trial.rackId} lift={lift} setup={trial} onChange={set} />
    </div>
  );
}

/** Lowest and highest start that the slider reaches (m). */
function startReach({ way }: Start): [number, number] {
  if (way === 'box') return [0.2, 0.6];
  if (way === 'pins') return [0.2, 1.9];
  return [0, 0.4];
}

/** Another lift keeps lifter and bar, and takes off what the rack cannot hang for it. */
function withLift(trial: Trial, lift: Lift, club: ClubRecords): Trial {
  const rack = club.rack.find((candidate) => candidate.id === trial.rackId);
  const rackId = rack?.lifts.includes(lift)
    ? rack.id
    : (club.rack.find((r) => r.lifts.includes(lift))?.id ?? null);
  return { ...trial, lift, rackId, start: { way: 'free', heightM: null }, bands: [], chains: [] };
}
