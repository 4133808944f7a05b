import { useState } from 'react';
import type { BodyMass } from '#contract/records/lifters.ts';
import { dateText } from '#contract/words/dateText.ts';
import { written } from '#contract/words/written.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { useBodyMassQuestion } from '#web/setup/useBodyMassQuestion.ts';
import { BodyMassLine } from './BodyMassLine.tsx';
import type { LifterRecords } from './lifterRecords.ts';

/** Body mass over time, with a field for today's. */
export function BodyMassSection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const units = useUnits();
  const [editing, setEditing] = useState<BodyMass | 'new' | null>(null);
  const [newest] = own.bodyMass;
  return (
    <section id={id} className="stack ruled">
      <div className="row ends">
        <h2>Body mass</h2>
        <div className="row">
          {newest && (
            <button type="button" onClick={() => setEditing(newest)}>
              Change {dateText(newest.takenOn)}
            </button>
          )}
          <button type="button" onClick={() => setEditing('new')}>
            Weigh in
          </button>
        </div>
      </div>
      {editing && (
        <MassForm
          key={editing === 'new' ? 'new' : editing.id}
          own={own}
          mass={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      {own.bodyMass.length === 0 ? (
        <p>Not weighed yet. Part of the body rises with the bar, so what a squat demands depends on it.</p>
      ) : (
        <MeasuredWidth>
          {(widthPx) => <BodyMassLine masses={own.bodyMass} unit={units.mass} widthPx={widthPx} />}
        </MeasuredWidth>
      )}
    </section>
  );
}

const labels = { massKg: 'Body mass', takenOn: 'Weighed on' };

function MassForm(props: { own: LifterRecords; mass: BodyMass | null; today: string; onLeave: () => void }) {
  const { mass, own } = props;
  const units = useUnits();
  const records = useRecords('bodyMass');
  const [massKg, setMassKg] = useState(mass?.massKg ?? null);
  const [takenOn, setTakenOn] = useState(mass?.takenOn ?? props.today);
  const draft = { lifterId: own.lifter.id, massKg, takenOn };
  const fields = useRecordFields('bodyMass', draft, mass, labels);
  const askOfMass = useBodyMassQuestion(own.lifter.id, takenOn, mass?.id);
  const save = async () => {
    if (massKg === null) return;
    const record = { ...draft, massKg };
    await (mass ? records.update({ ...record, id: mass.id }) : records.create(record));
    props.onLeave();
  };
  return (
    <RecordForm
      title={mass ? 'Change body mass' : 'Weigh in'}
      onSave={save}
      onLeave={props.onLeave}
      wrong={fields.wrong}
      leaveWord={mass ? 'Leave unchanged' : 'Not now'}
      onRemove={
        mass
          ? () => {
              props.onLeave();
              void records.remove(
                mass.id,
                `${written(mass.massKg, units.mass)} ${units.mass} on ${dateText(mass.takenOn)}`,
              );
            }
          : undefined
      }
    >
      <NumberField
        {...fields.quantity('massKg')}
        valueSi={massKg}
        unit={units.mass}
        onChange={setMassKg}
        ask={askOfMass}
      />
      <TextField {...fields.text('takenOn')} type="date" value={takenOn} onChange={setTakenOn} />
    </RecordForm>
  );
}
