import { useState } from 'react';
import type { Meet, SeasonEntry } from '#contract/records/season.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { MeetTicks } from '../MeetTicks.tsx';

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
      <MeetTicks meets={meets} ticked={meetIds} onChange={setMeetIds} />
    </RecordForm>
  );
}
