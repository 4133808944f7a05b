import { useState } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import type { Restriction } from '#contract/records/lifters.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import { useClub } from '#web/api/useClub.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useKeptForm } from '#web/parts/useKeptForm.ts';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BoxPick } from '#web/setup/BoxPick.tsx';
import { usualHeightsM } from '#web/setup/startHeights.ts';

const loads = [
  { value: 'any', word: 'any' },
  { value: 'bar', word: 'limited on the bar' },
  { value: 'lockout', word: 'limited at lockout, bands and chains counted' },
] as const;

const labels = {
  lift: 'Lift',
  leastBoxM: 'No deeper than on a box of',
  mostShare: 'At most, of the maximum',
  fromOn: 'From',
  untilOn: 'Last day',
  note: 'Note',
};

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
  const { box: boxes } = useClub();
  const [lift, setLift] = useState<Lift>(kept?.lift ?? 'squat');
  const [boxM, setBoxM] = useState(kept?.leastBoxM ?? null);
  const [load, setLoad] = useState(kept?.mostShare == null ? 'any' : kept.shareOf);
  const [share, setShare] = useState(kept?.mostShare ?? usualShare);
  const [fromOn, setFromOn] = useState(kept?.fromOn ?? props.today);
  const [untilOn, setUntilOn] = useState(kept?.untilOn ?? '');
  const [note, setNote] = useState(kept?.note ?? '');
  const called = `the restriction of the ${liftWord(lift)}`;
  const record: Omit<Restriction, 'id'> = {
    lifterId,
    lift,
    leastBoxM: lift === 'squat' ? boxM : null,
    mostShare: load === 'any' ? null : share,
    shareOf: load === 'lockout' ? 'lockout' : 'bar',
    fromOn,
    untilOn: untilOn === '' ? null : untilOn,
    note,
  };
  // Without a limit on the load its field is not there to be named.
  const named = load === 'any' ? { ...labels, mostShare: 'The restriction' } : labels;
  const fields = useRecordFields('restriction', record, kept, named);
  const ends = useKeptForm('restriction', { record, kept, called, onLeave: props.onLeave });
  return (
    <RecordForm
      title={kept ? 'Change a restriction' : 'Restrict this lifter'}
      {...ends}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={fields.wrong}
    >
      <SelectField {...fields.choice('lift')} value={lift} options={liftWords} onChange={setLift} />
      {lift === 'squat' && (
        <BoxPick
          label={labels.leastBoxM}
          hint="Holds for free squats and pins too, by where the bar is."
          boxes={boxes}
          heightM={boxM}
          none="as deep as wanted"
          onChange={setBoxM}
        >
          <NumberField
            {...fields.quantity('leastBoxM')}
            label="Height of that box"
            valueSi={boxM}
            unit={units.length}
            ask={(m) => usualQuestion(m, units.length, 'The box', usualHeightsM.box)}
            onChange={setBoxM}
          />
        </BoxPick>
      )}
      <SelectField label="Load" value={load} options={loads} onChange={setLoad} />
      {load !== 'any' && (
        <PercentField
          {...fields.figure('mostShare')}
          value={share}
          hint="Of the maximum that the percentages of a day refer to."
          onChange={setShare}
        />
      )}
      <TextField {...fields.text('fromOn')} type="date" value={fromOn} onChange={setFromOn} />
      <TextField
        {...fields.text('untilOn')}
        type="date"
        value={untilOn}
        hint="Empty: until further notice."
        onChange={setUntilOn}
      />
      <TextField
        {...fields.text('note')}
        value={note}
        hint="For the coach alone: it is not printed on any sheet."
        onChange={setNote}
      />
    </RecordForm>
  );
}
