import { useState } from 'react';
import type { Absence } from '#contract/records/season.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { fromOn: 'First day away', untilOn: 'Last day away', why: 'Why' };

/** Days on which a lifter does not train: a season plans around them. */
export function AbsenceForm(props: {
  lifterId: string;
  absence: Absence | null;
  today: string;
  onLeave: () => void;
}) {
  const { absence: kept, lifterId } = props;
  const records = useRecords('absence');
  const [fromOn, setFromOn] = useState(kept?.fromOn ?? props.today);
  const [untilOn, setUntilOn] = useState(kept?.untilOn ?? props.today);
  const [why, setWhy] = useState(kept?.why ?? '');
  const record = { lifterId, fromOn, untilOn, why };
  const fields = useRecordFields('absence', record, kept, labels);
  const save = async () => {
    await (kept ? records.update({ ...record, id: kept.id }, called) : records.create(record, called));
    props.onLeave();
  };
  return (
    <RecordForm
      title={kept ? 'Change an absence' : 'Enter an absence'}
      onSave={save}
      onLeave={props.onLeave}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={fields.wrong}
      onRemove={
        kept
          ? () => {
              props.onLeave();
              void records.remove(kept.id, called);
            }
          : undefined
      }
    >
      <TextField {...fields.text('fromOn')} type="date" value={fromOn} onChange={setFromOn} />
      <TextField {...fields.text('untilOn')} type="date" value={untilOn} onChange={setUntilOn} />
      <TextField {...fields.text('why')} value={why} hint="Holiday, work, illness." onChange={setWhy} />
    </RecordForm>
  );
}

const called = 'the absence';
