import { useState } from 'react';
import { Link } from 'wouter';
import { holdsOn, type Restriction } from '#contract/records/lifters.ts';
import { capital } from '#contract/words/capital.ts';
import { dateText } from '#contract/words/dateText.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { restrictedSentence } from '#contract/words/restrictedSentence.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { partAddress } from './partAddress.ts';
import { RestrictionForm } from './RestrictionForm.tsx';

/** Stands where this lifter's loads are worked out. */
export function RestrictedCaution({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const lifts = own.restriction.filter((one) => holdsOn(one, today)).map(({ lift }) => liftWord(lift));
  if (lifts.length === 0) return null;
  return (
    <p className="caution">
      <strong>Restricted.</strong> Days give this lifter less in the {[...new Set(lifts)].join(' and the ')};
      what you try out here is not limited.{' '}
      <Link href={partAddress(own.lifter.id, id)}>See the restriction.</Link>
    </p>
  );
}

/** What this lifter may not do: what holds today first, what is over last. */
export function RestrictionsSection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const [editing, setEditing] = useState<Restriction | 'new' | null>(null);
  const restrictions = own.restriction.toSorted((a, b) => endOf(b).localeCompare(endOf(a)));
  return (
    <section id={id} className="stack ruled">
      <div className="row ends">
        <h2>Restrictions</h2>
        <button type="button" onClick={() => setEditing('new')}>
          Restrict this lifter
        </button>
      </div>
      {editing && (
        <RestrictionForm
          key={editing === 'new' ? 'new' : editing.id}
          lifterId={own.lifter.id}
          restriction={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      {restrictions.length === 0 ? (
        <p>
          None. After an injury, say how deep this lifter may go and how much the load may be: no day then
          asks for more.
        </p>
      ) : (
        <ul className="stack loose">
          {restrictions.map((one) => (
            <RestrictionLine key={one.id} restriction={one} today={today} onOpen={() => setEditing(one)} />
          ))}
        </ul>
      )}
    </section>
  );
}

/** Later than any date where there is none. */
function endOf({ untilOn }: Restriction): string {
  return untilOn ?? '9999';
}

function RestrictionLine(props: { restriction: Restriction; today: string; onOpen: () => void }) {
  const { restriction, today } = props;
  const { length } = useUnits();
  const records = useRecords('restriction');
  const sentence = restrictedSentence(
    { ...restriction, mostKg: null },
    { date: dateText, height: (metres) => formatQuantity(metres, length), mass: String },
  );
  const holds = holdsOn(restriction, today);
  const isOver = restriction.untilOn !== null && restriction.untilOn < today;
  const called = `the restriction of the ${liftWord(restriction.lift)}`;
  const end = () =>
    void records.update({ ...restriction, untilOn: daysLater(today, -1) }, called, restriction);
  return (
    <li className={isOver ? 'quiet' : ''}>
      <p>
        <strong>{capital(liftWord(restriction.lift))}.</strong> {sentence}
      </p>
      <p className="small quiet">
        {isOver ? 'Over; it began' : holds ? 'Since' : 'From'} {dateText(restriction.fromOn)}
        {restriction.note === '' ? '' : `. ${restriction.note}`}
      </p>
      <div className="row screen-only">
        <button type="button" className="plain" onClick={props.onOpen}>
          Change
        </button>
        {holds && restriction.fromOn < today && (
          <button type="button" className="plain" onClick={end}>
            It is over
          </button>
        )}
      </div>
    </li>
  );
}
