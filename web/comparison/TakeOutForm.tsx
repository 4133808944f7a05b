import { useState } from 'react';
import type { Comparison, TakenOut } from '#contract/records/comparison.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useKeptForm } from '#web/parts/useKeptForm.ts';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { fromOn: 'From', why: 'Why' };

/** Takes a lifter out of a comparison from a day on, or puts back who was taken out by mistake. */
export function TakeOutForm(props: {
  comparison: Comparison;
  lifterId: string;
  name: string;
  kept: TakenOut | null;
  today: string;
  onLeave: () => void;
}) {
  const { comparison, lifterId, name, kept, today, onLeave } = props;
  const [fromOn, setFromOn] = useState(kept?.fromOn ?? today);
  const [why, setWhy] = useState(kept?.why ?? '');
  const record: Omit<TakenOut, 'id'> = { comparisonId: comparison.id, lifterId, fromOn, why };
  const fields = useRecordFields('takenOut', record, kept, labels);
  const called = `that ${name} was taken out`;
  const ends = useKeptForm('takenOut', { record, kept, called, onLeave });
  return (
    <RecordForm
      title={kept ? `${name} was taken out` : `Take ${name} out`}
      {...ends}
      saveWord={kept ? 'Save' : 'Take out'}
      wrong={fields.wrong}
    >
      <TextField {...fields.text('fromOn')} type="date" value={fromOn} onChange={setFromOn} />
      <TextField {...fields.text('why')} value={why} hint="May stay empty." onChange={setWhy} />
    </RecordForm>
  );
}
