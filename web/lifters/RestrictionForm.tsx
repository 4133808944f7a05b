import { useState } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

const loads = [
  { value: 'any', word: 'any' },
  { value: 'bar', word: 'limited on the bar' },
  { value: 'lockout', word: 'limited at lockout, bands and chains counted' },
] as const;

/** A share to begin with where a load is to be limited: hard work stays possible, nothing near a maximum. */
const usualShare = 0.8;

/** What a lifter may not do in a lift, and for how long. */
export function RestrictionForm(props: {
  lifterId: string;
  restriction: Restriction | null;
  today: string;
  onLeave: () => void;
}) {
  const { restriction: kept, lifterId } = props;
  const units = useUnits();
  const records = useRecords('restriction');
  const [lift, setLift] = useState<Lift>(kept?.lift ?? 'squat');
  const [boxM, setBoxM] = useState(kept?.leastBoxM ?? null);
  const [load, setLoad] = useState(kept?.mostShare == null ? 'any' : kept.shareOf);
  const [share, setShare] = useState(kept?.mostShare ?? usualShare);
  const [fromOn, setFromOn] = useState(kept?.fromOn ?? props.today);
  const [untilOn, setUntilOn] = useState(kept?.untilOn ?? '');
  const [note, setNote] = useState(kept?.note ?? '');
  const leastBoxM = lift === 'squat' ? boxM : null;
  const saysNothing = leastBoxM === null && load === 'any';
  const called = `the restriction of the ${liftWord(lift)}`;
  const save = async () => {
    const record: Omit<Restriction, 'id'> = {
      lifterId,
      lift,
      leastBoxM,
      mostShare: load === 'any' ? null : share,
      shareOf: load === 'lockout' ? 'lockout' : 'bar',
      fromOn,
      untilOn: untilOn === '' ? null : untilOn,
      note,
    };
    await (kept ? records.update({ ...record, id: kept.id }, called) : records.create(record, called));
    props.onLeave();
  };
  return (
    <RecordForm
      title={kept ? 'Change a restriction' : 'Restrict this lifter'}
      onSave={save}
      onLeave={props.onLeave}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={saysNothing ? 'Say how deep this lifter may go, or how much the load may be.' : null}
      onRemove={
        kept
          ? () => {
              props.onLeave();
              void records.remove(kept.id, called);
            }
          : undefined
      }
    >
      <SelectField label="Lift" value={lift} options={liftWords} onChange={setLift} />
      {lift === 'squat' && (
        <NumberField
          label="No deeper than on a box of"
          valueSi={boxM}
          unit={units.length}
          minSi={0.05}
          maxSi={1.5}
          hint="Holds for free squats and pins too, by where the bar is. Empty: as deep as wanted."
          onChange={setBoxM}
        />
      )}
      <SelectField label="Load" value={load} options={loads} onChange={setLoad} />
      {load !== 'any' && (
        <PercentField
          label="At most, of the maximum"
          value={share}
          min={0.05}
          max={1.5}
          hint="Of the maximum that the percentages of a day refer to."
          onChange={setShare}
        />
      )}
      <TextField label="From" type="date" value={fromOn} required onChange={setFromOn} />
      <TextField
        label="Last day"
        type="date"
        value={untilOn}
        hint="Empty: until further notice."
        error={untilOn !== '' && untilOn < fromOn ? 'The last day must not lie before the first.' : null}
        onChange={setUntilOn}
      />
      <TextField
        label="Note"
        value={note}
        maxLength={2000}
        hint="For the coach: it is printed on no sheet."
        onChange={setNote}
      />
    </RecordForm>
  );
}
