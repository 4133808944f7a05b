import { useState } from 'react';
import type { Comparison } from '#contract/records/comparison.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';

/** The note of a comparison: all of it that may change after the draw. */
export function NoteForm({ comparison, onLeave }: { comparison: Comparison; onLeave: () => void }) {
  const records = useRecords('comparison');
  const [note, setNote] = useState(comparison.note);
  const fields = useRecordFields('comparison', { ...comparison, note }, comparison, { note: 'Note' });
  const save = async () => {
    await records.update({ ...comparison, note }, 'the note');
    onLeave();
  };
  return (
    <RecordForm title="Change the note" onSave={save} onLeave={onLeave} wrong={fields.wrong}>
      <div className="whole-line">
        <TextField {...fields.text('note')} value={note} onChange={setNote} />
      </div>
    </RecordForm>
  );
}
