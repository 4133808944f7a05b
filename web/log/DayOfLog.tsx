import { Link } from 'wouter';
import type { LogDay } from '#contract/log/logDay.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { alikeSets } from '#reckon/log/alikeSets.ts';
import type { SetsAsked } from '#web/api/fetchSets.ts';
import { useClub } from '#web/api/useClub.ts';
import { useSets } from '#web/api/useSets.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { setupWords } from '#web/setup/setWords.ts';
import { AlikeLine } from './AlikeLine.tsx';
import { byLifter } from './byLifter.ts';
import { SetLine } from './SetLine.tsx';
import { sharedPlace } from './sharedPlace.ts';

/** One day of the log: a line that sums it up, and everybody's sets, which are fetched when it is opened. */
export function DayOfLog(props: {
  day: LogDay;
  /** How the log is narrowed. */
  asked: SetsAsked;
  open: boolean;
  onTurn: () => void;
}) {
  const { day, open } = props;
  return (
    <section className="log-day" aria-label={longDate(day.doneOn)}>
      <h2 className="row base">
        <button type="button" className="log-date" aria-expanded={open} onClick={props.onTurn}>
          {longDate(day.doneOn)}
        </button>
        <span className="small quiet">{sumOf(day)}</span>
      </h2>
      {open && <SetsOfDay asked={{ ...props.asked, from: day.doneOn, to: day.doneOn }} />}
    </section>
  );
}

function SetsOfDay({ asked }: { asked: SetsAsked }) {
  const { data, error } = useSets(asked);
  const club = useClub();
  const units = useUnits();
  if (error) {
    return (
      <p className="stop" role="alert">
        The sets of this day could not be fetched: {error.message}
      </p>
    );
  }
  if (!data) return <p className="quiet">Fetching the sets.</p>;
  const dayPlace = sharedPlace(data.sets);
  return (
    <>
      {dayPlace && <p className="small quiet">{dayPlace}</p>}
      {byLifter(data.sets).map(({ lifterId, sets }) => {
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
                const setup = `${liftWord(first.lift)}, ${setupWords(club, first, units, data.formerLabels)}`;
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
    </>
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
function sumOf({ lifters, sets, missed, struck }: LogDay): string {
  return [
    lifters === 1 ? '1 lifter' : `${lifters} lifters`,
    sets === 1 ? '1 set' : `${sets} sets`,
    ...(missed > 0 ? [`${missed} with a miss`] : []),
    ...(struck > 0 ? [`${struck} struck`] : []),
  ].join(', ');
}
