import { useState } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import { liftWord, liftWords, startText } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { StartFields } from '#web/setup/StartFields.tsx';
import type { HeightRow } from './heightRows.ts';
import { usualForwardM, usualHeight } from './usualHeights.ts';

const labels = {
  lift: 'Lift',
  bottomM: 'Bottom',
  lockoutM: 'Lockout',
  bottomForwardM: 'Bar in front',
  measuredOn: 'Measured on',
};

/** Bottom and lockout of one lift from one start, read off a tape. */
export function HeightsForm(props: {
  lifterId: string;
  row: HeightRow | null;
  today: string;
  onLeave: () => void;
}) {
  const { row } = props;
  const units = useUnits();
  const { box: boxes } = useClub();
  const records = useRecords('liftHeights');
  const [lift, setLift] = useState<Lift>(row?.lift ?? 'squat');
  const [start, setStart] = useState(row?.start ?? { way: 'free' as const, heightM: null });
  const [bottomM, setBottomM] = useState(row?.measured?.bottomM ?? null);
  const [lockoutM, setLockoutM] = useState(row?.measured?.lockoutM ?? null);
  const [bottomForwardM, setBottomForwardM] = useState(row?.measured?.bottomForwardM ?? null);
  const [measuredOn, setMeasuredOn] = useState(row?.measured?.measuredOn ?? props.today);
  const kept = row?.measured ?? null;
  const draft = { lifterId: props.lifterId, lift, start, bottomM, lockoutM, bottomForwardM, measuredOn };
  const fields = useRecordFields('liftHeights', draft, kept, labels);
  const askOf = (end: 'bottom' | 'lockout') => (m: number) =>
    usualQuestion(m, units.length, labels[`${end}M`], usualHeight(lift, start, end));
  const save = async () => {
    if (bottomM === null || lockoutM === null) return;
    const record = { ...draft, bottomM, lockoutM };
    await (kept ? records.update({ ...record, id: kept.id }) : records.create(record));
    props.onLeave();
  };
  return (
    <RecordForm
      title={kept ? 'Change measured heights' : 'Measure heights'}
      onSave={save}
      onLeave={props.onLeave}
      wrong={fields.wrong}
      onRemove={
        kept
          ? () => {
              const start = startText(kept.lift, kept.start, units.length);
              props.onLeave();
              void records.remove(kept.id, `heights of ${liftWord(kept.lift)}, ${start}`);
            }
          : undefined
      }
    >
      <SelectField
        {...fields.choice('lift')}
        value={lift}
        options={liftWords}
        onChange={(next) => {
          setLift(next);
          setStart({ way: 'free', heightM: null });
        }}
      />
      <StartFields lift={lift} start={start} boxes={boxes} onChange={setStart} />
      <NumberField
        {...fields.quantity('bottomM')}
        valueSi={bottomM}
        unit={units.length}
        hint="Floor to the centre of the bar, at the lowest point."
        onChange={setBottomM}
        ask={askOf('bottom')}
      />
      <NumberField
        {...fields.quantity('lockoutM')}
        valueSi={lockoutM}
        unit={units.length}
        hint="Floor to the centre of the bar, standing or pressed out."
        onChange={setLockoutM}
        ask={askOf('lockout')}
      />
      <NumberField
        {...fields.quantity('bottomForwardM')}
        valueSi={bottomForwardM}
        unit={units.length}
        hint="At the bottom, measured from its place at lockout; minus is behind. Empty: straight up is assumed."
        ask={(m) => usualQuestion(m, units.length, labels.bottomForwardM, usualForwardM)}
        onChange={setBottomForwardM}
      />
      <TextField {...fields.text('measuredOn')} type="date" value={measuredOn} onChange={setMeasuredOn} />
    </RecordForm>
  );
}
