import { useState } from 'react';
import { Link } from 'wouter';
import type { Absence } from '#contract/records/season.ts';
import { capital } from '#contract/words/capital.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { classesAhead } from '#reckon/season/classesAhead.ts';
import { useClub } from '#web/api/useClub.ts';
import { AbsenceForm } from '#web/setup/AbsenceForm.tsx';
import { ClassLines } from '#web/setup/ClassLines.tsx';
import type { LifterRecords } from './lifterRecords.ts';

/** What this lifter trains for, and when not. */
export function SeasonSection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const club = useClub();
  const [editing, setEditing] = useState<Absence | 'new' | null>(null);
  const ahead = own.absence.filter(({ untilOn }) => untilOn >= today);
  const past = own.absence.filter(({ untilOn }) => untilOn < today);
  return (
    <section id={id} className="stack ruled">
      <div className="row ends">
        <h2>Season</h2>
        <button type="button" onClick={() => setEditing('new')}>
          Enter an absence
        </button>
      </div>
      {editing && (
        <AbsenceForm
          key={editing === 'new' ? 'new' : editing.id}
          of={{ lifterId: own.lifter.id }}
          absence={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      <Seasons own={own} />
      <ClassLines ahead={classesAhead(club, own.seasonEntry, today)} />
      <Comparisons own={own} />
      {own.absence.length === 0 ? (
        <p className="quiet">No absences. Enter a holiday or an illness, and the season plans around it.</p>
      ) : (
        <ul className="stack">
          {[...ahead.toReversed(), ...past].map((one) => (
            <li key={one.id} className={one.untilOn < today ? 'quiet' : ''}>
              {dateText(one.fromOn)} to {dateText(one.untilOn)}: {one.why}{' '}
              <button type="button" className="plain" onClick={() => setEditing(one)}>
                Change
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The comparisons of two ways that this lifter was drawn for. */
function Comparisons({ own }: { own: LifterRecords }) {
  const { comparison } = useClub();
  const { id, name } = own.lifter;
  const ofLifter = comparison.flatMap((one) => {
    const drawn = one.planDocument.drawn.find(({ lifterId }) => lifterId === id);
    const out = own.takenOut.find(({ comparisonId }) => comparisonId === one.id);
    return drawn ? [{ ...one, way: drawn.way, out }] : [];
  });
  if (ofLifter.length === 0) return null;
  return (
    <ul className="stack">
      {ofLifter.map(({ id: comparisonId, title, way, planDocument: { startsOn, endsOn }, out }) => (
        <li key={comparisonId}>
          <Link href={`~/comparison/${comparisonId}`}>{title}</Link>: {name} drew "{way}",{' '}
          {dateText(startsOn)} to {dateText(endsOn)}.
          {out && ` Taken out from ${dateText(out.fromOn)} on${out.why === '' ? '' : ` (${out.why})`}.`}
        </li>
      ))}
    </ul>
  );
}

function Seasons({ own }: { own: LifterRecords }) {
  const { season: seasons, meet: meets } = useClub();
  if (own.seasonEntry.length === 0) return <p>This lifter is in no season.</p>;
  return (
    <ul className="stack">
      {own.seasonEntry.map(({ id, seasonId, meetIds }) => {
        const season = seasons.find((one) => one.id === seasonId)!;
        const goals = meetIds.map((meetId) => meets.find((meet) => meet.id === meetId)!);
        const byHand = own.plannedByHand.filter((one) => one.seasonId === seasonId).length;
        return (
          <li key={id}>
            <Link href={`~/season/${seasonId}/lifter/${own.lifter.id}`}>{season.title}</Link>:{' '}
            {goals.map(({ title, date }) => `${title} on ${dateText(date)}`).join(', then ')}.
            {byHand > 0 && ` ${capital(counted(byHand, 'group'))} set by hand.`}
          </li>
        );
      })}
    </ul>
  );
}
