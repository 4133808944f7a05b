import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Season } from '#contract/records/season.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { methodWord } from '../methodWord.ts';

const labels = { title: 'Title', methodId: 'Method', fromOn: 'First day', note: 'Note' };

/** What a season is called, which kept method it follows, and from which day it is planned. */
export function SeasonForm({ season: kept, onLeave }: { season: Season; onLeave: () => void }) {
  const { method: methods } = useClub();
  const records = useRecords('season');
  const [, go] = useLocation();
  const [title, setTitle] = useState(kept.title);
  const [methodId, setMethodId] = useState(kept.methodId);
  const [fromOn, setFromOn] = useState(kept.fromOn);
  const [note, setNote] = useState(kept.note);
  const draft: Season = { ...kept, title, methodId, fromOn, note };
  const fields = useRecordFields('season', draft, kept, labels);
  return (
    <RecordForm
      title={`Change ${kept.title}`}
      onSave={async () => {
        await records.update(draft, title);
        onLeave();
      }}
      onLeave={onLeave}
      wrong={fields.wrong}
      onRemove={() => {
        go('/');
        void records.remove(kept.id, kept.title);
      }}
    >
      <TextField {...fields.text('title')} value={title} onChange={setTitle} required />
      <SelectField
        {...fields.choice('methodId')}
        value={methodId}
        options={methods.map((one) => ({ value: one.id, word: methodWord(one) }))}
        onChange={setMethodId}
        hint="Each version that the club keeps; a season goes on by its own until you choose another."
      />
      <TextField {...fields.text('fromOn')} type="date" value={fromOn} onChange={setFromOn} required />
      <TextField {...fields.text('note')} value={note} onChange={setNote} />
    </RecordForm>
  );
}
