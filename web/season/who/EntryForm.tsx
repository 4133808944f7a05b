import { useState } from 'react';
import type { Meet, SeasonEntry } from '#contract/records/season.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { MeetTicks } from '../MeetTicks.tsx';
import { ClassFields } from './ClassFields.tsx';
import { classDrafts, saidClasses, unsaid } from './classDrafts.ts';

const labels = { meetIds: 'Meets', classes: 'Classes' };

/** The meets that one lifter trains for in a season, the class at each, and the way out of it. */
export function EntryForm(props: {
  entry: SeasonEntry;
  name: string;
  meets: readonly Meet[];
  onLeave: () => void;
}) {
  const { entry, name, meets, onLeave } = props;
  const records = useRecords('seasonEntry');
  const [meetIds, setMeetIds] = useState(entry.meetIds);
  const [typed, setTyped] = useState(() => classDrafts(entry.classes));
  const draft = { ...entry, meetIds, classes: saidClasses(typed, meetIds) };
  const fields = useRecordFields('seasonEntry', draft, entry, labels);
  const called = `${name} in this season`;
  return (
    <RecordForm
      title={`Meets and classes of ${name}`}
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
      <fieldset className="season-whole stack tight season-ticks">
        <legend className="field-label">Trains for</legend>
        <MeetTicks meets={meets} ticked={meetIds} onChange={setMeetIds} />
      </fieldset>
      {meets
        .filter(({ id }) => meetIds.includes(id))
        .map((meet) => (
          <ClassFields
            key={meet.id}
            meet={meet}
            draft={typed[meet.id] ?? unsaid}
            onChange={(next) => setTyped({ ...typed, [meet.id]: next })}
          />
        ))}
    </RecordForm>
  );
}
