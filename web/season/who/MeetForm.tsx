import { useState } from 'react';
import type { Meet } from '#contract/records/season.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useKeptForm } from '#web/parts/useKeptForm.ts';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

const labels = { title: 'Name', date: 'Day', note: 'Note' };

/** A meet: what it is called and when it is. Moving it moves everybody who trains for it, in every season. */
export function MeetForm({ meet: kept, onLeave }: { meet: Meet | null; onLeave: () => void }) {
  const [title, setTitle] = useState(kept?.title ?? '');
  const [date, setDate] = useState(kept?.date ?? '');
  const [note, setNote] = useState(kept?.note ?? '');
  const draft: Omit<Meet, 'id'> = { title, date, note };
  const fields = useRecordFields('meet', draft, kept, labels);
  const ends = useKeptForm('meet', {
    record: draft,
    kept,
    called: title,
    keptCalled: kept?.title ?? title,
    onLeave,
  });
  return (
    <RecordForm
      title={kept ? `Change ${kept.title}` : 'Add a meet'}
      {...ends}
      leaveWord={kept ? 'Leave unchanged' : 'Not now'}
      wrong={fields.wrong}
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
