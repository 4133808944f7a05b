import type { Lift } from '#contract/records/lift.ts';
import type { Method } from '#contract/records/method.ts';
import type { SeasonPlan, WeekOfLifter } from '#contract/season/seasonPlan.ts';
import { workText } from '#contract/season/workSentence.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { percent } from '#contract/words/percent.ts';
import { PhaseSwatch } from '#web/charts/PhaseSwatch.tsx';
import type { Column } from '#web/parts/DataTable.tsx';
import type { DoneInWeek } from './doneByWeek.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { weekShares } from './weekShares.ts';

/** A week as a row: where it lies, what is planned of one lift, what was done of it, and all lifts against the limit. */
export function lifterWeekColumns(
  { method, today }: SeasonView,
  { plan }: LifterSeason,
  lift: Lift,
  done: ReadonlyMap<string, DoneInWeek>,
  strength: {
    /** What a share of the maximum may come to in a week ahead; empty: nothing can be said. */
    rangeOf: (monday: string, share: number) => string;
    /** The maximum of a week; empty: nothing can be said. */
    maximumOf: (monday: string) => string;
  },
): Column<WeekOfLifter>[] {
  const most = method.limits.mostHeavyLiftsAWeek;
  return [
    {
      key: 'week',
      head: 'Week of',
      cell: (week) => (
        <>
          <span className="season-date">{shortDate(week.monday)}</span>
          <span className="phone-only small quiet">{phaseText(week, method, plan)}</span>
          <span className="phone-only small quiet">{strength.maximumOf(week.monday)}</span>
        </>
      ),
    },
    {
      key: 'phase',
      head: 'Phase',
      wideOnly: true,
      cell: (week) => (
        <span className="season-phase">
          <PhaseSwatch pattern={method.phases.findIndex(({ id }) => id === week.phaseId)} />
          {phaseText(week, method, plan)}
        </span>
      ),
    },
    {
      key: 'maximum',
      head: 'Maximum',
      numeric: true,
      wideOnly: true,
      cell: ({ monday }) => <span className="season-date">{strength.maximumOf(monday)}</span>,
    },
    {
      key: 'lifts',
      head: 'Planned lifts',
      numeric: true,
      cell: (week) => weekShares(week, lift).lifts || '–',
    },
    {
      key: 'average',
      head: 'average at lockout',
      numeric: true,
      wideOnly: true,
      cell: (week) => shareText(weekShares(week, lift).lockoutShare),
    },
    {
      key: 'bands',
      head: 'of it bands',
      numeric: true,
      wideOnly: true,
      cell: (week) => shareText(weekShares(week, lift).bandShare || null),
    },
    {
      key: 'peak',
      head: 'heaviest',
      numeric: true,
      cell: (week) => {
        const { peakShare } = weekShares(week, lift);
        const range = peakShare === null ? '' : strength.rangeOf(week.monday, peakShare);
        return (
          <>
            {shareText(peakShare)}
            {range !== '' && <span className="season-about">{range}</span>}
          </>
        );
      },
    },
    {
      key: 'doneLifts',
      head: 'Done lifts',
      numeric: true,
      cell: ({ monday }) => done.get(monday)?.lifts ?? (monday <= today ? '–' : ''),
    },
    {
      key: 'donePeak',
      head: 'heaviest',
      numeric: true,
      cell: ({ monday }) => shareText(done.get(monday)?.peakShare ?? null),
    },
    {
      key: 'doneWork',
      head: 'work',
      numeric: true,
      wideOnly: true,
      cell: ({ monday }) => {
        const workJ = done.get(monday)?.workJ ?? null;
        return workJ === null ? '' : workText(workJ);
      },
    },
    {
      key: 'all',
      head: 'All lifts planned',
      numeric: true,
      wideOnly: true,
      cell: ({ load }) => load.lifts || '–',
    },
    {
      key: 'heavy',
      head: most === null ? '90 % or more' : `90 % or more (at most ${most})`,
      numeric: true,
      wideOnly: true,
      cell: ({ load: { heavyLifts } }) =>
        most !== null && heavyLifts > most ? <strong className="stop">{heavyLifts}</strong> : heavyLifts,
    },
  ];
}

/** "Speed waves, 4", and the meets of the week. */
function phaseText(
  { phaseId, weekOfPhase, meets }: WeekOfLifter,
  { phases }: Pick<Method, 'phases'>,
  plan: Pick<SeasonPlan, 'meets'>,
) {
  const title = phases.find(({ id }) => id === phaseId)?.title ?? 'open';
  return (
    <span>
      {weekOfPhase === null ? title : `${title}, ${weekOfPhase}`}
      {meets.map((at) => (
        <strong key={at}> {plan.meets[at]?.title}</strong>
      ))}
    </span>
  );
}

function shareText(share: number | null): string {
  return share === null ? '' : percent(share);
}
