import type { Paper } from '#contract/paper/paperSize.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import { aheadSentence } from '#contract/season/aheadSentence.ts';
import { nearLine } from '#contract/season/nearLine.ts';
import type { PlannedDay, PlannedGroup, PlannedWeek } from '#contract/season/seasonPlan.ts';
import { capital } from '#contract/words/capital.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWord, startText } from '#contract/words/liftWords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type GroupAhead, useWeekAhead } from '../ahead/useWeekAhead.ts';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';
import { SeasonPaperHead } from './SeasonPaperHead.tsx';

/** One lifter's near days on a page, to bar and bands; nothing where no day is near. */
export function NearPage(props: {
  season: SeasonView;
  of: LifterSeason;
  paper: Paper;
  clubName: string;
  isInvented: boolean;
}) {
  const { season, of, paper } = props;
  const last = season.nearUntil;
  const isNear = ({ date, closed }: PlannedDay) =>
    last !== null && date >= season.today && date <= last && closed === null;
  const weeks = of.plan.weeks
    .map((week) => ({ ...week, days: week.days.filter(isNear) }))
    .filter(({ days }) => days.length > 0);
  if (weeks.length === 0) return null;
  const days = weeks.flatMap((week) => week.days);
  return (
    <section className={`paper season-paper ${paper}`} aria-label={`Near days of ${of.lifter.name}`}>
      <SeasonPaperHead {...props} title={of.lifter.name} page={1} pages={1} />
      <p>
        <strong>Bars up to {shortDate(last!)}</strong>
      </p>
      <table className="season-paper-weeks season-paper-near">
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">Work</th>
            <th scope="col">Bar</th>
            <th scope="col">Bands and chains</th>
            <th scope="col">Truly</th>
            <th scope="col">Sets × reps</th>
          </tr>
        </thead>
        <tbody>
          {weeks.map((week) => (
            <NearRows key={week.monday} season={season} of={of} week={week} />
          ))}
        </tbody>
      </table>
      <p className="fine">
        {aheadSentence(days, season.today, last)} Go by the sheet of the day. Spotters and safety pins where a
        bar is near the limit; nobody stands in line with a stretched band. Planned, not permitted: local
        rules and whoever coaches come first.
      </p>
    </section>
  );
}

function NearRows({ season, of, week }: { season: SeasonView; of: LifterSeason; week: PlannedWeek }) {
  const ahead = useWeekAhead(season, of.lifter.id, week);
  return week.days.flatMap((day) =>
    day.groups.map((group, at) => (
      <tr key={`${day.date} ${group.askedId}`}>
        <th scope="row">{at === 0 && shortDate(day.date)}</th>
        <NearCells group={group} ahead={ahead.of(day, group)} />
      </tr>
    )),
  );
}

function NearCells({ group, ahead }: { group: PlannedGroup; ahead: GroupAhead | null }) {
  const units = useUnits();
  const work = `${group.title}: ${capital(liftWord(group.lift))}, ${startText(group.lift, group.start, units.length)}`;
  const line = ahead !== null && 'work' in ahead ? nearLine(ahead.day, ahead.work, units).line : null;
  if (ahead === null || line === null) {
    const why = ahead === null ? '' : 'work' in ahead ? ahead.work.place.problem : ahead.says;
    return (
      <>
        <td>{work}</td>
        <td colSpan={4}>{why}</td>
      </>
    );
  }
  const { bottom, lockout } = line;
  return (
    <>
      <td>{work}</td>
      <td>
        <strong>
          {line.bar} {units.mass}
        </strong>
        , {line.aSide}
      </td>
      <td>{line.hung.join('; ')}</td>
      <td>
        {bottom.load === lockout.load
          ? `${lockout.load} ${units.mass}`
          : `${bottom.load} to ${lockout.load} ${units.mass}${markOf[lockout.known]}`}
      </td>
      <td>{line.steps.map(({ sets, reps, bar }) => `${sets} × ${reps} with ${bar}`).join(', ')}</td>
    </>
  );
}

const markOf: Record<KnownHow, string> = {
  measured: '',
  estimated: ' est.',
  assumed: ' assumed',
  notMeasured: ' not measured',
};
