import { Link } from 'wouter';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { alikeSets } from '#reckon/log/alikeSets.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { FormerLabels } from '#web/setup/onBarText.ts';
import { setupWords } from '#web/setup/setWords.ts';
import { AlikeLine } from './AlikeLine.tsx';
import type { LogDay } from './byDay.ts';
import { SetLine } from './SetLine.tsx';
import { sharedPlace } from './sharedPlace.ts';

/** One day of the log: a line that sums it up, and everybody's sets when it is opened. */
export function DayOfLog(props: {
  day: LogDay;
  open: boolean;
  onTurn: () => void;
  formerLabels: FormerLabels;
}) {
  const { day, open } = props;
  const club = useClub();
  const units = useUnits();
  const dayPlace = sharedPlace(day.lifters.flatMap(({ sets }) => sets));
  return (
    <section className="log-day" aria-label={longDate(day.date)}>
      <h2 className="row base">
        <button type="button" className="log-date" aria-expanded={open} onClick={props.onTurn}>
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
          const beside = (set: LoggedSet) => besideOf(set, (dayPlace || ownPlace) !== '');
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
                {alikeSets(countedFirst(sets)).map((alike) => {
                  const [first] = alike as [LoggedSet];
                  const setup = `${liftWord(first.lift)}, ${setupWords(club, first, units, props.formerLabels)}`;
                  return alike.length === 1 ? (
                    <SetLine key={first.id} set={first} setup={setup} beside={beside(first)} />
                  ) : (
                    <AlikeLine key={first.id} sets={alike} setup={setup} besideOf={beside} />
                  );
                })}
              </ol>
            </section>
          );
        })}
    </section>
  );
}

/** What was struck stands after what counts, so that it parts no sets that are alike. */
function countedFirst(sets: readonly LoggedSet[]): LoggedSet[] {
  return sets.toSorted((a, b) => Number(a.struckAt !== null) - Number(b.struckAt !== null));
}

/** What is to be said of a set beside how it went. */
function besideOf({ platform, place, planNumber, note }: LoggedSet, placeSaid: boolean): string[] {
  const by = planNumber === null ? '' : `by number ${planNumber} of the day`;
  return [platform ? 'at a meet' : '', placeSaid ? '' : place, by, note].filter(Boolean);
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
