import { useState } from 'react';
import { groupSummary } from '#contract/paper/groupSummary.ts';
import type { PlannedByHand } from '#contract/records/season.ts';
import { besideSentences } from '#contract/season/besideSentences.ts';
import { ownBoxSentence } from '#contract/season/ownBoxSentence.ts';
import type { DayOfLifter, GroupOfLifter } from '#contract/season/seasonPlan.ts';
import type { SessionWork } from '#contract/season/sessionWork.ts';
import { workSentence } from '#contract/season/workSentence.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { NearBar } from './ahead/NearBar.tsx';
import type { GroupAhead, WeekAhead } from './ahead/useWeekAhead.ts';
import { workOfDays } from './ahead/workOfDays.ts';
import { askedOf } from './askedOf.ts';
import { HandForm } from './HandForm.tsx';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { StartChoice } from './StartChoice.tsx';

/** A planned day of one lifter: its groups as the day screen words them, and what comes beside. */
export function PlannedDayView(props: {
  day: DayOfLifter;
  season: SeasonView;
  isKept: boolean;
  of: LifterSeason;
  /** What is known of its bars today. */
  ahead: WeekAhead;
  estimates: ReadonlyMap<GroupOfLifter, SessionWork | null>;
  /** What the coach set by hand on that day, for this lifter or for everybody. */
  byHand: readonly PlannedByHand[];
}) {
  const { day, byHand, ahead } = props;
  const { mass } = useUnits();
  const beside = besideSentences(day, mass);
  const isThere = (askedId: string) => day.groups.some((group) => group.askedId === askedId);
  const { work, workedOut, unknown } = workOfDays([day], ahead, props.estimates);
  const leftOut = new Set(byHand.map(({ askedId }) => askedId).filter((askedId) => !isThere(askedId)));
  return (
    <article className="stack season-day">
      <h3>
        {shortDate(day.date)}: {day.title}
      </h3>
      {day.closed !== null && <p>No training: {day.closed}.</p>}
      {day.groups.map((group) => (
        <Work
          key={group.askedId}
          {...props}
          asked={{ id: group.askedId, title: group.title }}
          group={group}
          hand={handOf(byHand, group.askedId)}
          ahead={ahead.of(day, group)}
        />
      ))}
      {[...leftOut].map((id) => (
        <Work
          key={id}
          {...props}
          asked={{ id, title: askedOf(props.season, props.of, day.date, id)?.title ?? id }}
          group={null}
          hand={handOf(byHand, id)}
          ahead={null}
        />
      ))}
      {work.workJ > 0 && (
        <p className="small quiet">
          {workSentence(work, mass)} {workedOut > 0 ? 'The time is estimated.' : 'All estimated.'}
          {unknown > 0 && ' Work of which nothing can be said is left out.'}
        </p>
      )}
      {beside.length > 0 && <p className="small quiet">{beside.join(' ')}</p>}
    </article>
  );
}

/** A setting for the lifter alone goes before one for everybody. */
function handOf(byHand: readonly PlannedByHand[], askedId: string): PlannedByHand | null {
  const both = byHand.filter((one) => one.askedId === askedId);
  return both.find(({ lifterId }) => lifterId !== null) ?? both[0] ?? null;
}

/** One group of the day, or that it is left out (null), and the form that sets it by hand. */
function Work(props: {
  asked: { id: string; title: string };
  group: GroupOfLifter | null;
  hand: PlannedByHand | null;
  day: DayOfLifter;
  season: SeasonView;
  isKept: boolean;
  of: LifterSeason;
  ahead: GroupAhead | null;
}) {
  const { asked, group, hand, season, of, ahead } = props;
  const { date } = props.day;
  const { length } = useUnits();
  const [editing, setEditing] = useState(false);
  const [choosing, setChoosing] = useState(false);
  const isOpen = !props.isKept && date >= season.today;
  const method = askedOf(season, of, date, asked.id);
  return (
    <div className="stack tight">
      <p>
        <strong>{asked.title}.</strong>{' '}
        {(hand !== null || group?.byHand) && <span className="mark">set by hand</span>}{' '}
        {group === null ? 'Left out.' : groupSummary(group, length)}
      </p>
      {group?.ownBox && <p className="small quiet">{ownBoxSentence(group.ownBox, length)}</p>}
      {ahead && ('work' in ahead ? <NearBar {...ahead} /> : <p className="small">{ahead.says}</p>)}
      {hand?.note && <p className="small quiet">{hand.note}</p>}
      {editing && (
        <HandForm {...{ date, group, asked, season, of }} kept={hand} onLeave={() => setEditing(false)} />
      )}
      {isOpen && !editing && (
        <div className="row screen-only">
          <button
            type="button"
            className="plain"
            aria-label={`Set by hand: ${asked.title}, ${shortDate(date)}`}
            onClick={() => setEditing(true)}
          >
            Set by hand
          </button>
          {group !== null && method !== undefined && method.variants.length > 1 && (
            <button
              type="button"
              className="plain"
              aria-expanded={choosing}
              aria-label={`Which start: ${asked.title}, ${shortDate(date)}`}
              onClick={() => setChoosing(!choosing)}
            >
              Which start
            </button>
          )}
        </div>
      )}
      {choosing && isOpen && group !== null && method !== undefined && (
        <StartChoice {...{ date, group, method, hand, season, of }} />
      )}
    </div>
  );
}
