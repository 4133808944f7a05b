import { useState } from 'react';
import type { Meet, SeasonEntry } from '#contract/records/season.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { meetIds: 'Meets' };

/** The meets that one lifter trains for in a season, and the way out of it. */
export function EntryForm(props: {
  entry: SeasonEntry;
  name: string;
  meets: readonly Meet[];
  onLeave: () => void;
}) {
  const { entry, name, meets, onLeave } = props;
  const records = useRecords('seasonEntry');
  const [meetIds, setMeetIds] = useState(entry.meetIds);
  const draft = { ...entry, meetIds };
  const fields = useRecordFields('seasonEntry', draft, entry, labels);
  const called = `${name} in this season`;
  return (
    <RecordForm
      title={`Meets of ${name}`}
      onSave={async () => {
        await records.update(draft, called);
        onLeave();
      }}
      onLeave={onLeave}
      wrong={fields.wrong ?? fields.choice('meetIds').error}
      onRemove={() => {
        onLeave();
        void records.remove(entry.id, called);
      }}
    >
      {meets.map(({ id, title, date }) => (
        <CheckField
          key={id}
          label={`${title}, ${dateText(date)}`}
          checked={meetIds.includes(id)}
          onChange={(isIn) => setMeetIds(isIn ? [...meetIds, id] : meetIds.filter((one) => one !== id))}
        />
      ))}
    </RecordForm>
  );
}
