import { useState } from 'react';
import type { Lifter } from '#contract/records/lifters.ts';
import { equipmentWords } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import { useClub } from '#web/api/useClub.ts';
import { LabelsField } from '#web/parts/LabelsField.tsx';
import { labelsOf } from '#web/parts/labelsIn.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { usualStatureM } from './usualHeights.ts';

/** A lifter being written down: among whom they compete is asked, never guessed. */
type LifterDraft = Omit<Lifter, 'id' | 'category'> & { category: Lifter['category'] | null };

/** Who the lifter is; what is not known may stay empty. */
export function LifterForm(props: {
  title: string;
  /** Null: somebody new. */
  lifter: Lifter | null;
  onSave: (lifter: Omit<Lifter, 'id'>) => Promise<unknown>;
  onLeave: () => void;
  /** Only of a lifter who is in the club already. */
  onRemove?: () => void;
}) {
  const { lifter } = props;
  const isNew = lifter === null;
  const [draft, setDraft] = useState<LifterDraft>(lifter ?? nobody);
  const units = useUnits();
  const club = useClub();
  const set = (change: Partial<LifterDraft>) => setDraft({ ...draft, ...change });
  const fields = useRecordFields('lifter', draft, lifter, labels);
  return (
    <RecordForm
      title={props.title}
      onSave={async () => {
        const { category } = draft;
        if (category !== null) await props.onSave({ ...draft, category });
      }}
      onLeave={props.onLeave}
      wrong={fields.wrong}
      leaveWord={isNew ? 'Not now' : 'Leave unchanged'}
      onRemove={props.onRemove}
    >
      <TextField {...fields.text('name')} value={draft.name} onChange={(name) => set({ name })} />
      <NumberField
        {...fields.quantity('statureM')}
        valueSi={draft.statureM}
        unit={units.length}
        hint="Standing tall, without shoes. Bar heights are estimated from it until they are measured."
        ask={(m) => usualQuestion(m, units.length, labels.statureM, usualStatureM)}
        onChange={(statureM) => set({ statureM })}
      />
      <TextField
        {...fields.text('bornOn')}
        type="date"
        value={draft.bornOn ?? ''}
        hint="Lifters under 18 are marked and get cautions of their own."
        onChange={(bornOn) => set({ bornOn: bornOn === '' ? null : bornOn })}
      />
      <SelectField
        {...fields.choice('category')}
        value={draft.category}
        options={categories}
        onChange={(category) => set({ category })}
      />
      <SelectField
        {...fields.choice('equipment')}
        value={draft.equipment}
        options={equipmentWords}
        onChange={(equipment) => set({ equipment })}
      />
      <LabelsField
        {...fields.choice('labels')}
        labels={draft.labels}
        used={labelsOf(club.lifter)}
        onChange={(given) => set({ labels: given })}
      />
      {!isNew && (
        <TextField
          {...fields.text('leftOn')}
          type="date"
          value={draft.leftOn ?? ''}
          hint="Leave empty as long as they lift here. What they lifted stays on record."
          onChange={(leftOn) => set({ leftOn: leftOn === '' ? null : leftOn })}
        />
      )}
      <TextField {...fields.text('note')} value={draft.note} onChange={(note) => set({ note })} />
    </RecordForm>
  );
}

const labels = {
  name: 'Name',
  statureM: 'Stature',
  bornOn: 'Born on',
  category: 'Competes among',
  equipment: 'Usually lifts in',
  labels: 'Labels',
  leftOn: 'Left the club on',
  note: 'Note',
};

const nobody: LifterDraft = {
  name: '',
  bornOn: null,
  category: null,
  statureM: null,
  equipment: 'raw',
  leftOn: null,
  labels: [],
  note: '',
};

const categories = [
  { value: 'women', word: 'women' },
  { value: 'men', word: 'men' },
  { value: 'other', word: 'other' },
] as const;
