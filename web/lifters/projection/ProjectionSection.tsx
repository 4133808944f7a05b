import { useState } from 'react';
import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import type { Equipment, Lift } from '#contract/records/lift.ts';
import { equipmentWords, liftWords } from '#contract/words/liftWords.ts';
import { useProjection } from '#web/api/useProjection.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import type { LifterRecords } from '../lifterRecords.ts';
import { MinorCaution } from '../MinorCaution.tsx';
import { MeetDayView } from './MeetDayView.tsx';
import { wrongMeetDay } from './wrongMeetDay.ts';
import './projection.css';

const WEEKS_AHEAD = 4;
const MS_A_DAY = 86_400_000;

const tapers = [
  { value: '0', word: 'nothing' },
  { value: '1', word: '1 %' },
  { value: '2', word: '2 %' },
] as const;

/** A meet ahead: its day, the equipment, and what each lift may be. */
export function ProjectionSection(props: {
  id: string;
  own: LifterRecords;
  today: string;
  /** While estimates are worked out for the first time there is nothing to carry forward. */
  hasEstimates: boolean;
}) {
  const { today, hasEstimates } = props;
  const { lifter } = props.own;
  const [on, setOn] = useState(() =>
    new Date(Date.parse(today) + 7 * WEEKS_AHEAD * MS_A_DAY).toISOString().slice(0, 10),
  );
  const [equipment, setEquipment] = useState<Equipment>(lifter.equipment);
  const [taperPercent, setTaper] = useState<(typeof tapers)[number]['value']>('0');
  const [lift, setLift] = useState<Lift>('squat');
  const wrong = wrongMeetDay(on, today);
  const { data, error, isPending } = useProjection(
    { lifterId: lifter.id, on, equipment, taperPercent },
    wrong === null && hasEstimates,
  );
  const shown = data?.find((one) => one.lift === lift) ?? data?.[0];
  return (
    <section id={props.id} className="stack ruled projection" aria-labelledby="projection-title">
      <div className="row ends">
        <h2 id="projection-title">At the next meet</h2>
        {data && data.length > 1 && shown && (
          <Choice
            label="Lift at the meet"
            options={liftWords.filter(({ value }) => data.some((one) => one.lift === value))}
            value={shown.lift}
            onChange={setLift}
          />
        )}
      </div>
      <div className="projection-asked screen-only">
        <TextField label="Day of the meet" type="date" value={on} onChange={setOn} error={wrong} />
        <SelectField label="Equipment" value={equipment} options={equipmentWords} onChange={setEquipment} />
        <Choice label="Taper adds" showLabel options={tapers} value={taperPercent} onChange={setTaper} />
      </div>
      <MinorCaution lifter={lifter} today={wrong === null ? on : today} />
      {error && <p role="alert">{error.message}</p>}
      {wrong === null && error === null && <Shown shown={shown} isPending={isPending} />}
    </section>
  );
}

function Shown({ shown, isPending }: { shown: LiftProjection | undefined; isPending: boolean }) {
  if (isPending) return <p className="quiet">Carrying the log forward to that day.</p>;
  if (!shown) return <p>Nothing is logged of this lifter yet: log a few sets or write down a best.</p>;
  return <MeetDayView projection={shown} />;
}
