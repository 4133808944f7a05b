import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import { equipmentWords, liftWords } from '#contract/words/liftWords.ts';
import { classesAhead } from '#reckon/season/classesAhead.ts';
import { useClub } from '#web/api/useClub.ts';
import { useProjection } from '#web/api/useProjection.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { ClassLines } from '#web/setup/ClassLines.tsx';
import type { LifterRecords } from '../lifterRecords.ts';
import { MinorCaution } from '../MinorCaution.tsx';
import { MeetDayView } from './MeetDayView.tsx';
import { usualMeetDay } from './usualMeetDay.ts';
import { wrongMeetDay } from './wrongMeetDay.ts';
import './projection.css';

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
  const { lifter, seasonEntry } = props.own;
  const club = useClub();
  const [on, setOn] = useInAddress('on', usualMeetDay(today));
  const [equipmentAsked, setEquipment] = useInAddress('equipment', lifter.equipment);
  const equipment = equipmentWords.find(({ value }) => value === equipmentAsked)?.value ?? lifter.equipment;
  const [taperAsked, setTaper] = useInAddress('taper', '0');
  const taperPercent = tapers.find(({ value }) => value === taperAsked)?.value ?? '0';
  const [lift, setLift] = useInAddress('lift');
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
      <ClassLines ahead={classesAhead(club, seasonEntry, today)} />
      {error && <p role="alert">{error.message}</p>}
      {wrong === null && error === null && <Shown shown={shown} isPending={isPending} />}
    </section>
  );
}

function Shown({ shown, isPending }: { shown: LiftProjection | undefined; isPending: boolean }) {
  if (isPending) return <p className="quiet">Carrying the log forward to that day.</p>;
  if (!shown) return <p>Nothing is logged for this lifter yet: log a few sets or write down a best.</p>;
  return <MeetDayView projection={shown} />;
}
