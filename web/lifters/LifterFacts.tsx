import { ageOn } from '#contract/calendar/ageOn.ts';
import { equipmentWord } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from './lifterRecords.ts';

/** The head of the page: name and who it is, in a line. */
export function LifterFacts(props: { own: LifterRecords; today: string; onEdit: () => void }) {
  const { lifter, bodyMass } = props.own;
  const units = useUnits();
  const [newest] = bodyMass;
  const about = [
    lifter.bornOn === null ? 'age not known' : `${ageOn(lifter.bornOn, props.today)} years`,
    lifter.category,
    equipmentWord(lifter.equipment),
    lifter.statureM === null
      ? 'stature not known'
      : `${written(lifter.statureM, units.length)} ${units.length}`,
    newest === undefined ? 'not weighed yet' : `${written(newest.massKg, units.mass)} ${units.mass}`,
  ];
  return (
    <section className="stack tight">
      <div className="row base">
        <h1>{lifter.name}</h1>
        <span>{about.join(', ')}</span>
        <button type="button" className="plain" onClick={props.onEdit}>
          Change
        </button>
      </div>
      {lifter.note !== '' && <p className="quiet">{lifter.note}</p>}
    </section>
  );
}
