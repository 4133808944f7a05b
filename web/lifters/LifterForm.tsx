import { useState } from 'react';
import type { Lifter } from '#contract/records/lifters.ts';
import { equipmentWords } from '#contract/words/liftWords.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { localToday } from '#web/parts/localToday.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** A lifter being written down: among whom they compete is asked, never guessed. */
type LifterDraft = Omit<Lifter, 'id' | 'category'> & { category: Lifter['category'] | null };

/** Who the lifter is; what is not known may stay empty. */
export function LifterForm(props: {
  title: string;
  initial: LifterDraft;
  onSave: (lifter: Omit<Lifter, 'id'>) => Promise<unknown>;
  onLeave: () => void;
  /** Only of a lifter who is in the club already. */
  onRemove?: () => void;
}) {
  const isNew = props.onRemove === undefined;
  const [draft, setDraft] = useState(props.initial);
  const units = useUnits();
  const today = localToday(useClubSettings().timeZone);
  const set = (change: Partial<LifterDraft>) => setDraft({ ...draft, ...change });
  return (
    <RecordForm
      title={props.title}
      onSave={async () => {
        const { category } = draft;
        if (category !== null) await props.onSave({ ...draft, category });
      }}
      onLeave={props.onLeave}
      leaveWord={isNew ? 'Not now' : 'Leave unchanged'}
      onRemove={props.onRemove}
    >
      <TextField label="Name" value={draft.name} required maxLength={80} onChange={(name) => set({ name })} />
      <NumberField
        label="Stature"
        valueSi={draft.statureM}
        unit={units.length}
        minSi={1}
        maxSi={2.5}
        hint="Standing tall, without shoes. Bar heights are estimated from it until they are measured."
        onChange={(statureM) => set({ statureM })}
      />
      <TextField
        label="Born on"
        type="date"
        value={draft.bornOn ?? ''}
        today={today}
        hint="Lifters under 18 are marked and get cautions of their own."
        onChange={(bornOn) => set({ bornOn: bornOn === '' ? null : bornOn })}
      />
      <SelectField
        label="Competes among"
        value={draft.category}
        options={categories}
        onChange={(category) => set({ category })}
      />
      <SelectField
        label="Usually lifts in"
        value={draft.equipment}
        options={equipmentWords}
        onChange={(equipment) => set({ equipment })}
      />
      {!isNew && (
        <TextField
          label="Left the club on"
          type="date"
          value={draft.leftOn ?? ''}
          hint="Empty as long as they lift here. What they lifted stays written down."
          onChange={(leftOn) => set({ leftOn: leftOn === '' ? null : leftOn })}
        />
      )}
      <TextField label="Note" value={draft.note} maxLength={2000} onChange={(note) => set({ note })} />
    </RecordForm>
  );
}

const categories = [
  { value: 'women', word: 'women' },
  { value: 'men', word: 'men' },
  { value: 'other', word: 'other' },
] as const;
