import { useState } from 'react';
import { Link } from 'wouter';
import { longDate } from '#contract/words/dayWords.ts';
import { useClub } from '#web/api/useClub.ts';
import type { FormerLabels } from '#web/setup/onBarText.ts';
import type { LogDay } from './byDay.ts';
import { SetLine } from './SetLine.tsx';
import { sharedPlace } from './sharedPlace.ts';

/** One day of the log: a line that sums it up, and everybody's sets when it is opened. */
export function DayOfLog(props: { day: LogDay; open: boolean; formerLabels: FormerLabels }) {
  const { day } = props;
  const club = useClub();
  const [open, setOpen] = useState(props.open);
  const dayPlace = sharedPlace(day.lifters.flatMap(({ sets }) => sets));
  return (
    <section className="log-day" aria-label={longDate(day.date)}>
      <h2 className="row base">
        <button type="button" className="log-date" aria-expanded={open} onClick={() => setOpen(!open)}>
          {longDate(day.date)}
        </button>
        <span className="small quiet">
          {sumOf(day)}
          {dayPlace && `, ${dayPlace}`}
        </span>
      </h2>
      {open &&
        day.lifters.map(({ lifterId, sets }) => {
          const ownPlace = dayPlace ? '' : sharedPlace(sets);
          return (
            <section key={lifterId} className="log-lifter">
              <div>
                <h3>
                  <Link href={`~/lifters/${lifterId}`}>
                    {club.lifter.find(({ id }) => id === lifterId)?.name ?? 'a lifter no longer kept'}
                  </Link>
                </h3>
                {ownPlace && <p className="small quiet">{ownPlace}</p>}
              </div>
              <ol>
                {sets.map((set, i) => (
                  <SetLine
                    key={set.id}
                    set={set}
                    before={sets[i - 1] ?? null}
                    placeSaid={(dayPlace || ownPlace) !== ''}
                    formerLabels={props.formerLabels}
                  />
                ))}
              </ol>
            </section>
          );
        })}
    </section>
  );
}

/** "8 lifters, 74 sets, 2 with a miss, 1 struck" */
function sumOf({ lifters }: LogDay): string {
  const all = lifters.flatMap(({ sets }) => sets);
  const counted = all.filter(({ struckAt }) => struckAt === null);
  const missed = counted.filter(({ made, reps }) => made < reps).length;
  const struck = all.length - counted.length;
  return [
    lifters.length === 1 ? '1 lifter' : `${lifters.length} lifters`,
    counted.length === 1 ? '1 set' : `${counted.length} sets`,
    ...(missed > 0 ? [`${missed} with a miss`] : []),
    ...(struck > 0 ? [`${struck} struck`] : []),
  ].join(', ');
}
