import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import type { PlannedByHand } from '#contract/records/season.ts';
import { aheadSentence } from '#contract/season/aheadSentence.ts';
import { loadFigures } from '#contract/season/loadFigures.ts';
import { seasonWarningSentence } from '#contract/season/seasonWarningSentence.ts';
import { weekSentences } from '#contract/season/weekSentences.ts';
import { workFigures } from '#contract/season/workFigures.ts';
import { daysLater, longDate } from '#contract/words/dayWords.ts';
import { firstAndMore } from '#contract/words/firstAndMore.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { useEstimatedWork } from './ahead/useEstimatedWork.ts';
import { nothingAhead, useWeekAhead } from './ahead/useWeekAhead.ts';
import { workOfDays } from './ahead/workOfDays.ts';
import { LoadFigures } from './LoadFigures.tsx';
import { PlannedDayView } from './PlannedDayView.tsx';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { TakeWeek } from './taken/TakeWeek.tsx';
import { warningsOfWeek } from './warningsOfWeek.ts';

/** One week of one lifter in words: what it is for, its days, what it comes to, and what to look at. */
export function WeekPanel(props: {
  season: SeasonView;
  of: LifterSeason;
  at: number;
  /** A plan that was taken is only looked at. */
  isKept: boolean;
  byHand: readonly PlannedByHand[];
  /** Somebody opened it just now. */
  takesFocus: boolean;
  onGo: (weeks: number) => void;
  onLeave: () => void;
}) {
  const { season, of, at, isKept, takesFocus, onGo, onLeave } = props;
  const { plan, lifter } = of;
  const week = plan.weeks[at]!;
  const sunday = daysLater(week.monday, 6);
  const byHand = props.byHand.filter(({ date }) => date >= week.monday && date <= sunday);
  const warnings = warningsOfWeek(plan, week.monday);
  const alike = season.lifters.filter((one) => one !== of && one.plan.weeks[at] === week);
  const { mass } = useUnits();
  const worked = useWeekAhead(season, lifter.id, week);
  const ahead = isKept ? nothingAhead : worked;
  const whence = aheadSentence(week.days, season.today, season.nearUntil);
  const estimates = useEstimatedWork(lifter.id, week, season.today);
  const head = useRef<HTMLHeadingElement>(null);
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && !isInForm(event.target) && onLeave();
    const element = panel.current;
    element?.addEventListener('keydown', leave);
    return () => element?.removeEventListener('keydown', leave);
  }, [onLeave]);
  useEffect(() => {
    if (!takesFocus || head.current === null) return;
    head.current.focus({ preventScroll: true });
    if (head.current.getBoundingClientRect().top > window.innerHeight / 2)
      head.current.scrollIntoView({ block: 'start' });
  }, [takesFocus]);
  return (
    <section ref={panel} className="stack season-week" aria-labelledby="season-week-head">
      <div className="row ends base">
        <h2 id="season-week-head" ref={head} tabIndex={-1}>
          Week of {longDate(week.monday)}: {lifter.name}
        </h2>
        <div className="row screen-only">
          <button type="button" disabled={at === 0} onClick={() => onGo(-1)}>
            Week before
          </button>
          <button type="button" disabled={at === plan.weeks.length - 1} onClick={() => onGo(1)}>
            Week after
          </button>
          <button type="button" onClick={onLeave}>
            Close
          </button>
        </div>
      </div>
      <div className="stack tight">
        {weekSentences(season.method, plan, at).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        {whence !== null && !isKept && <p className="small">{whence}</p>}
        <p className="small quiet">
          {week.isoWeek} in the calendar.{' '}
          {alike.length > 0 && `The same: ${firstAndMore(alike.map((one) => one.lifter.name))}. `}
          <Link href={`/${season.id}/lifter/${lifter.id}`}>All weeks of {lifter.name}</Link>
        </p>
      </div>
      {warnings.length > 0 && (
        <ul className="stack tight caution" aria-label="To look at">
          {warnings.map((warning) => {
            const sentence = seasonWarningSentence(warning);
            return <li key={sentence}>{sentence}</li>;
          })}
        </ul>
      )}
      {!isKept && sunday >= season.today && <TakeWeek seasonId={season.id} monday={week.monday} />}
      {week.days.length > 0 && (
        <div className="season-days">
          {week.days.map((day) => (
            <PlannedDayView
              key={day.date}
              day={day}
              season={season}
              isKept={isKept}
              of={of}
              ahead={ahead}
              estimates={estimates}
              byHand={byHand.filter(
                ({ date, lifterId }) => date === day.date && (lifterId === null || lifterId === lifter.id),
              )}
            />
          ))}
        </div>
      )}
      <LoadFigures
        figures={[
          ...loadFigures(week.load, season.method.limits),
          ...workFigures(workOfDays(week.days, ahead, estimates), mass),
        ]}
      />
    </section>
  );
}

/** A form is left by its own Esc, and the week stays. */
function isInForm(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('form') !== null;
}
