import { type Paper, pxPerMm } from '#contract/paper/paperSize.ts';
import type { PlannedWeek } from '#contract/season/seasonPlan.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { percent } from '#contract/words/percent.ts';
import { PhaseSwatch } from '#web/charts/PhaseSwatch.tsx';
import { SeasonHead } from '#web/charts/SeasonHead.tsx';
import { SeasonRow } from '#web/charts/SeasonRow.tsx';
import { screenRowPx } from '#web/charts/SeasonScene.ts';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';
import { awayOf, seasonScene } from '../seasonRows.ts';
import { weekShares } from '../weekShares.ts';
import { SeasonPaperHead } from './SeasonPaperHead.tsx';

const wideMm = { a4: 193, letter: 198 };

/** One lifter's season on a page: the picture, and a week a row with each lift's share at lockout. */
export function LifterPage(props: {
  season: SeasonView;
  of: LifterSeason;
  weeks: readonly PlannedWeek[];
  paper: Paper;
  clubName: string;
  isInvented: boolean;
  page: number;
  pages: number;
}) {
  const { season, of, weeks, paper } = props;
  const scene = seasonScene({ ...season, lifters: [of] }, null);
  const frame = {
    weekPx: (wideMm[paper] * pxPerMm) / scene.mondays.length,
    weeks: scene.mondays.length,
    rowPx: screenRowPx,
    todayAt: scene.todayAt,
  };
  return (
    <section
      className={`paper season-paper ${paper}`}
      aria-label={`Season of ${of.lifter.name}, page ${props.page}`}
    >
      <SeasonPaperHead {...props} title={of.lifter.name} />
      <SeasonHead firstMonday={scene.mondays[0]!} meets={scene.meets} frame={frame} />
      <SeasonRow row={scene.rows[0]!} frame={frame} />
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
                <td key={value}>{liftText(weekShares(week, value))}</td>
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
        Each lift: lifts of the week, what they hold at lockout on average with bands counted, the heaviest.
        Shares are of the maximum that percentages refer to; a box for each training day. Planned, not
        permitted: local rules and whoever coaches come first.
      </p>
    </section>
  );
}

function PhaseOf({ week, season, of }: { week: PlannedWeek; season: SeasonView; of: LifterSeason }) {
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

function liftText({ lifts, lockoutShare, peakShare }: ReturnType<typeof weekShares>): string {
  if (lifts === 0) return '';
  if (lockoutShare === null || peakShare === null) return String(lifts);
  return `${lifts}: ${percent(lockoutShare)}, ${percent(peakShare)}`;
}
