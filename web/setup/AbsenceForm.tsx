import { useState } from 'react';
import type { Lifter } from '#contract/records/lifters.ts';
import type { Absence } from '#contract/records/season.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useKeptForm } from '#web/parts/useKeptForm.ts';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { lifterId: 'Who', fromOn: 'First day away', untilOn: 'Last day away', why: 'Why' };
const called = 'the absence';
/** In the choice of who: the whole club. */
const nobodyTrains = '';

/** Days on which somebody does not train, or nobody does: a season plans around them. */
export function AbsenceForm(props: {
  absence: Absence | null;
  /** Of whom it is: one of several, or the whole club; a single lifter is not asked for. */
  of: { lifterId: string } | { lifters: readonly Lifter[] };
  today: string;
  onLeave: () => void;
}) {
  const { absence: kept, of, today, onLeave } = props;
  const [lifterId, setLifterId] = useState(kept ? kept.lifterId : 'lifterId' in of ? of.lifterId : null);
  const [fromOn, setFromOn] = useState(kept?.fromOn ?? today);
  const [untilOn, setUntilOn] = useState(kept?.untilOn ?? today);
  const [why, setWhy] = useState(kept?.why ?? '');
  const record: Omit<Absence, 'id'> = { lifterId, fromOn, untilOn, why };
  const fields = useRecordFields('absence', record, kept, labels);
  const ends = useKeptForm('absence', { record, kept, called, onLeave });
  return (
    <RecordForm
      title={kept ? 'Change an absence' : 'Enter an absence'}
      {...ends}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={fields.wrong}
    >
      {'lifters' in of && (
        <SelectField
          {...fields.choice('lifterId')}
          value={lifterId ?? nobodyTrains}
          options={[
            { value: nobodyTrains, word: 'nobody trains: the club is closed' },
            ...of.lifters.map(({ id, name }) => ({ value: id, word: name })),
          ]}
          onChange={(id) => setLifterId(id === nobodyTrains ? null : id)}
        />
      )}
      <TextField {...fields.text('fromOn')} type="date" value={fromOn} onChange={setFromOn} />
      <TextField {...fields.text('untilOn')} type="date" value={untilOn} onChange={setUntilOn} />
      <TextField {...fields.text('why')} value={why} hint="Holiday, work, illness." onChange={setWhy} />
    </RecordForm>
  );
}
