import { useEffect, useRef, useState } from 'react';
import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWords, liftWord, liftWords } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { RackFields } from '#web/setup/RackFields.tsx';
import { StartFields } from '#web/setup/StartFields.tsx';
import { bare, barLimits } from '#web/setup/setDraft.ts';
import { useBarQuestion } from '#web/setup/useBarQuestion.ts';

type Draft = Omit<Best, 'id' | 'setup'> & { setup: Omit<Setup, 'barKg'> & { barKg: number | null } };

const labels = {
  lift: 'Lift',
  doneOn: 'Done on',
  place: 'Place',
  equipment: 'Lifted in',
  platform: 'At a meet',
  note: 'Note',
};

/** A maximum with everything that was on the bar. The next one is of the same day and place, in the next lift of a meet. */
export function BestForm(props: { lifterId: string; best: Best | null; today: string; onLeave: () => void }) {
  const { best } = props;
  const units = useUnits();
  const { box: boxes, lifter } = useClub();
  const records = useRecords('best');
  const usual = lifter.find(({ id }) => id === props.lifterId)?.equipment ?? 'raw';
  const [draft, setDraft] = useState<Draft>(best ?? emptyBest(props.lifterId, props.today, usual));
  const [added, setAdded] = useState(0);
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (added > 0) place.current?.querySelector('select')?.focus();
  }, [added]);
  const set = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const setSetup = (change: Partial<Draft['setup']>) => set({ setup: { ...draft.setup, ...change } });
  const fields = useRecordFields('best', draft, best, labels);
  const askOfBar = useBarQuestion(props.lifterId, draft.lift, true, best?.id);
  const save = async (more: boolean) => {
    const { barKg } = draft.setup;
    if (barKg === null) return;
    const record = { ...draft, setup: { ...draft.setup, barKg } };
    await (best ? records.update({ ...record, id: best.id }) : records.create(record));
    if (!more) return props.onLeave();
    setDraft({ ...draft, lift: liftAfter(draft.lift), setup: { ...bare, barKg: null }, note: '' });
    setAdded(added + 1);
  };
  return (
    <div ref={place}>
      <RecordForm
        key={added}
        title={best ? 'Change a best' : 'Write down a best'}
        onSave={save}
        onLeave={props.onLeave}
        wrong={fields.wrong}
        moreWord={best ? undefined : 'Save and add the next'}
        leaveWord={best ? 'Leave unchanged' : 'Not now'}
        onRemove={
          best
            ? () => {
                props.onLeave();
                void records.remove(best.id, `the ${liftWord(best.lift)} best on ${dateText(best.doneOn)}`);
              }
            : undefined
        }
      >
        <SelectField
          {...fields.choice('lift')}
          value={draft.lift}
          options={liftWords}
          onChange={(lift) => set({ lift, setup: { ...draft.setup, ...bare } })}
        />
        <StartFields
          lift={draft.lift}
          start={draft.setup.start}
          boxes={boxes}
          onChange={(start) => setSetup({ start })}
        />
        <NumberField
          label="On the bar"
          valueSi={draft.setup.barKg}
          unit={units.mass}
          {...barLimits}
          hint="Bar, discs and collars together."
          ask={askOfBar}
          onChange={(barKg) => setSetup({ barKg })}
        />
        <TextField
          {...fields.text('doneOn')}
          type="date"
          value={draft.doneOn}
          onChange={(doneOn) => set({ doneOn })}
        />
        <TextField {...fields.text('place')} value={draft.place} onChange={(place) => set({ place })} />
        <SelectField
          {...fields.choice('equipment')}
          value={draft.equipment}
          options={equipmentWords}
          onChange={(equipment) => set({ equipment })}
        />
        <CheckField
          label={labels.platform}
          checked={draft.platform}
          onChange={(platform) => set({ platform })}
        />
        <TextField {...fields.text('note')} value={draft.note} onChange={(note) => set({ note })} />
        <RackFields lift={draft.lift} setup={draft.setup} onChange={setSetup} />
      </RecordForm>
    </div>
  );
}

function emptyBest(lifterId: string, today: string, equipment: Equipment): Draft {
  return {
    lifterId,
    lift: 'squat',
    doneOn: today,
    place: '',
    platform: false,
    equipment,
    setup: { ...bare, barKg: null },
    note: '',
  };
}

/** In the order of a meet; after the last the first again. */
function liftAfter(lift: Lift): Lift {
  const at = liftWords.findIndex(({ value }) => value === lift);
  return liftWords[(at + 1) % liftWords.length]!.value;
}
