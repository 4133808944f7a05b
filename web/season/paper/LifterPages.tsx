import { pxPerMm } from '#contract/paper/paperSize.ts';
import type { Lift } from '#contract/records/lift.ts';
import { massRange } from '#contract/season/farSentence.ts';
import type { WeekOfLifter } from '#contract/season/seasonPlan.ts';
import type { MaximumInWeek } from '#contract/season/strengthAhead.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { percent } from '#contract/words/percent.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { useClub } from '#web/api/useClub.ts';
import { useStrengthAhead } from '#web/api/useWeeksAhead.ts';
import { PhaseSwatch } from '#web/charts/PhaseSwatch.tsx';
import { SeasonHead } from '#web/charts/SeasonHead.tsx';
import { SeasonRow } from '#web/charts/SeasonRow.tsx';
import { screenRowPx } from '#web/charts/SeasonScene.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { type FittedPage, FittedPages } from '#web/print/FittedPages.tsx';
import { useFitting } from '#web/print/useFitting.ts';
import { ClassLines } from '#web/setup/ClassLines.tsx';
import { classesInSeason } from '../classesInSeason.ts';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';
import { awayOf, seasonScene } from '../seasonRows.ts';
import { type WeekShares, weekShares } from '../weekShares.ts';
import { type SeasonPaper, SeasonPaperHead } from './SeasonPaperHead.tsx';
import { StrengthOnPaper } from './StrengthOnPaper.tsx';

const wideMm = { a4: 193, letter: 198 };

/** One lifter's season on as many pages as its weeks need: the picture, strength under it, and a week a row with each lift's share at lockout. */
export function LifterPages(props: SeasonPaper) {
  return (
    <FittedPages rows={props.of.plan.weeks}>
      {(page) => <LifterPage key={page.page} {...props} {...page} />}
    </FittedPages>
  );
}

function LifterPage(props: SeasonPaper & FittedPage<WeekOfLifter>) {
  const { season, of, rows: weeks, paper } = props;
  const club = useClub();
  const page = useFitting<HTMLElement>(0, props.onTooFull);
  const scene = seasonScene({ ...season, lifters: [of] }, null);
  const frame = {
    weekPx: (wideMm[paper] * pxPerMm) / scene.mondays.length,
    weeks: scene.mondays.length,
    rowPx: screenRowPx,
    todayAt: scene.todayAt,
  };
  const { mass } = useUnits();
  const { data: strength } = useStrengthAhead(season.id, of.lifter.id);
  const aheadOf = ({ monday }: WeekOfLifter, lift: Lift) =>
    strength?.lifts.find((one) => one.lift === lift)?.weeks.find((one) => one.monday === monday);
  return (
    <section
      ref={page}
      className={`paper season-paper ${paper}`}
      aria-label={`Season of ${of.lifter.name}, page ${props.page}`}
    >
      <SeasonPaperHead {...props} title={of.lifter.name} />
      {props.page === 1 && <ClassLines ahead={classesInSeason(club, season, of)} />}
      <SeasonHead firstMonday={scene.mondays[0]!} meets={scene.meets} frame={frame} />
      <SeasonRow row={scene.rows[0]!} frame={frame} />
      {props.page === 1 && <StrengthOnPaper {...{ season, of, scene }} wideMm={wideMm[paper]} />}
      <table className="season-paper-weeks">
        <thead>
          <tr>
            <th scope="col">Week of</th>
            <th scope="col">Phase</th>
            {liftWords.map(({ value, word }) => (
              <th key={value} scope="col">
                {word}
              </th>
            ))}
            <th scope="col">done</th>
          </tr>
        </thead>
        <tbody>
          {weeks.map((week) => (
            <tr key={week.monday}>
              <th scope="row">{shortDate(week.monday)}</th>
              <td>
                <PhaseOf week={week} season={season} of={of} />
              </td>
              {liftWords.map(({ value }) => (
                <td key={value}>{liftText(weekShares(week, value), aheadOf(week, value), mass)}</td>
              ))}
              <td>
                <span className="ticks">
                  {week.days
                    .filter(({ closed }) => closed === null)
                    .map(({ date }) => (
                      <i key={date} />
                    ))}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="fine">
        For each lift: how many lifts, their average at lockout with bands counted, and the heaviest. From
        this week on: how many, the heaviest, and the range that it falls in 80 times in 100, as far as can be
        told today. Maximum of each lift: the line is the estimate, dark its range, light the range ahead, 80
        times in 100; triangles are straight bests, filled at a meet. Shares are of the maximum that
        percentages refer to; a box for each training day. A plan, not a permission: local rules and the coach
        come first.
      </p>
    </section>
  );
}

function PhaseOf({ week, season, of }: { week: WeekOfLifter; season: SeasonView; of: LifterSeason }) {
  const pattern = season.method.phases.findIndex(({ id }) => id === week.phaseId);
  const meets = week.meets.map((at) => of.plan.meets[at]?.title).join(', ');
  return (
    <span className="season-paper-phase">
      <PhaseSwatch pattern={pattern} />
      <span>
        {season.method.phases[pattern]?.title ?? 'open'}
        {week.weekOfPhase !== null && `, ${week.weekOfPhase}`}
        {awayOf(week) === 'all' && ': no training'}
        {meets !== '' && <strong> {meets}</strong>}
      </span>
    </span>
  );
}

/** "12: 70 %, 80 %"; of a week ahead "12: 80 %, 110 to 120 kg". */
function liftText(
  { lifts, lockoutShare, peakShare }: WeekShares,
  maximum: MaximumInWeek | undefined,
  mass: MassUnit,
): string {
  if (lifts === 0) return '';
  if (lockoutShare === null || peakShare === null) return String(lifts);
  return maximum === undefined
    ? `${lifts}: ${percent(lockoutShare)}, ${percent(peakShare)}`
    : `${lifts}: ${percent(peakShare)}, ${massRange(maximum, peakShare, mass)}`;
}
