import type { KnownHow } from '#contract/records/knownHow.ts';
import { aheadSentence } from '#contract/season/aheadSentence.ts';
import { nearLine } from '#contract/season/nearLine.ts';
import type { DayOfLifter, GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { capital } from '#contract/words/capital.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWord, startText } from '#contract/words/liftWords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type FittedPage, FittedPages } from '#web/print/FittedPages.tsx';
import { useFitting } from '#web/print/useFitting.ts';
import { type GroupAhead, useWeekAhead, type WeekAhead } from '../ahead/useWeekAhead.ts';
import { type SeasonPaper, SeasonPaperHead } from './SeasonPaperHead.tsx';

interface NearRow {
  day: DayOfLifter;
  group: GroupOfLifter;
}

/** One lifter's near days to bar and bands, on as many pages as they need; nothing where no day is near. */
export function NearPages(props: SeasonPaper) {
  const { season, of } = props;
  const last = season.nearUntil;
  const isNear = ({ date, closed }: DayOfLifter) =>
    last !== null && date >= season.today && date <= last && closed === null;
  const days = of.plan.weeks.flatMap((week) => week.days.filter(isNear));
  const monday = of.plan.weeks[0]?.monday ?? season.today;
  const ahead = useWeekAhead(season, of.lifter.id, { monday, days });
  if (last === null || days.length === 0) return null;
  return (
    <FittedPages rows={days.flatMap((day) => day.groups.map((group): NearRow => ({ day, group })))}>
      {(page) => <NearPage key={page.page} {...props} {...page} {...{ days, last, ahead }} />}
    </FittedPages>
  );
}

function NearPage(
  props: SeasonPaper & FittedPage<NearRow> & { days: readonly DayOfLifter[]; last: string; ahead: WeekAhead },
) {
  const { season, of, rows, days, last, ahead } = props;
  const paper = useFitting<HTMLElement>(0, props.onTooFull);
  return (
    <section
      ref={paper}
      className={`paper season-paper ${props.paper}`}
      aria-label={`Near days of ${of.lifter.name}, page ${props.page}`}
    >
      <SeasonPaperHead {...props} title={of.lifter.name} />
      <p>
        <strong>Bars up to {shortDate(last)}</strong>
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
          {rows.map(({ day, group }, at) => (
            <tr key={`${day.date} ${group.askedId}`}>
              <th scope="row">{rows[at - 1]?.day !== day && shortDate(day.date)}</th>
              <NearCells group={group} ahead={ahead.of(day, group)} />
            </tr>
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

function NearCells({ group, ahead }: { group: GroupOfLifter; ahead: GroupAhead | null }) {
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
