import { useState } from 'react';
import type { Meet } from '#contract/records/season.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { title: 'Name', date: 'Day', note: 'Note' };

/** A meet: what it is called and when it is. Moving it moves everybody who trains for it, in every season. */
export function MeetForm({ meet: kept, onLeave }: { meet: Meet | null; onLeave: () => void }) {
  const records = useRecords('meet');
  const [title, setTitle] = useState(kept?.title ?? '');
  const [date, setDate] = useState(kept?.date ?? '');
  const [note, setNote] = useState(kept?.note ?? '');
  const draft: Omit<Meet, 'id'> = { title, date, note };
  const fields = useRecordFields('meet', draft, kept, labels);
  const save = async () => {
    await (kept ? records.update({ ...draft, id: kept.id }, title) : records.create(draft, title));
    onLeave();
  };
  return (
    <RecordForm
      title={kept ? `Change ${kept.title}` : 'Add a meet'}
      onSave={save}
      onLeave={onLeave}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={fields.wrong}
      onRemove={
        kept
          ? () => {
              onLeave();
              void records.remove(kept.id, kept.title);
            }
          : undefined
      }
    >
      <TextField {...fields.text('title')} value={title} onChange={setTitle} required />
      <TextField
        {...fields.text('date')}
        type="date"
        value={date}
        onChange={setDate}
        required
        hint={kept ? 'Moves everybody who trains for it, in every season.' : undefined}
      />
      <TextField {...fields.text('note')} value={note} onChange={setNote} />
    </RecordForm>
  );
}
