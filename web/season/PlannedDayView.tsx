import { useState } from 'react';
import { groupSummary } from '#contract/paper/groupSummary.ts';
import type { PlannedByHand } from '#contract/records/season.ts';
import { besideSentences } from '#contract/season/besideSentences.ts';
import type { PlannedDay, PlannedGroup } from '#contract/season/seasonPlan.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { HandForm } from './HandForm.tsx';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** A planned day of one lifter: its groups as the day screen words them, and what comes beside. */
export function PlannedDayView(props: {
  day: PlannedDay;
  season: SeasonView;
  of: LifterSeason;
  /** What the coach set by hand on that day, for this lifter or for everybody. */
  byHand: readonly PlannedByHand[];
}) {
  const { day, byHand } = props;
  const { mass } = useUnits();
  const beside = besideSentences(day, mass);
  const leftOut = byHand.filter(({ instead }) => instead === null);
  return (
    <article className="stack season-day">
      <h3>
        {shortDate(day.date)}: {day.title}
      </h3>
      {day.closed !== null && <p>No training: {day.closed}.</p>}
      {day.groups.map((group) => (
        <Group key={group.askedId} {...props} group={group} hand={handOf(byHand, group.askedId)} />
      ))}
      {leftOut.map((hand) => (
        <LeftOut key={hand.id} {...props} hand={hand} />
      ))}
      {beside.length > 0 && <p className="small quiet">{beside.join(' ')}</p>}
    </article>
  );
}

/** A setting for the lifter alone goes before one for everybody. */
function handOf(byHand: readonly PlannedByHand[], askedId: string): PlannedByHand | null {
  const both = byHand.filter((one) => one.askedId === askedId);
  return both.find(({ lifterId }) => lifterId !== null) ?? both[0] ?? null;
}

function Group(props: {
  group: PlannedGroup;
  hand: PlannedByHand | null;
  day: PlannedDay;
  season: SeasonView;
  of: LifterSeason;
}) {
  const { group, hand, day, season, of } = props;
  const { length } = useUnits();
  const [editing, setEditing] = useState(false);
  return (
    <div className="stack tight">
      <p>
        <strong>{group.title}.</strong> {hand && <span className="mark">set by hand</span>}{' '}
        {groupSummary(group, length)}
      </p>
      {hand?.note && <p className="small quiet">{hand.note}</p>}
      {editing ? (
        <HandForm
          date={day.date}
          group={group}
          asked={{ id: group.askedId, title: group.title }}
          kept={hand}
          season={season}
          of={of}
          onLeave={() => setEditing(false)}
        />
      ) : (
        <div className="screen-only">
          <button
            type="button"
            className="plain"
            aria-label={`Set by hand: ${group.title}, ${shortDate(day.date)}`}
            onClick={() => setEditing(true)}
          >
            Set by hand
          </button>
        </div>
      )}
    </div>
  );
}

function LeftOut(props: { hand: PlannedByHand; day: PlannedDay; season: SeasonView; of: LifterSeason }) {
  const { hand, day, season, of } = props;
  const [editing, setEditing] = useState(false);
  const title = askedTitle(season, hand.askedId);
  return (
    <div className="stack tight">
      <p>
        <strong>{title}.</strong> <span className="mark">set by hand</span> Left out.
      </p>
      {hand.note && <p className="small quiet">{hand.note}</p>}
      {editing ? (
        <HandForm
          date={day.date}
          group={null}
          asked={{ id: hand.askedId, title }}
          kept={hand}
          season={season}
          of={of}
          onLeave={() => setEditing(false)}
        />
      ) : (
        <div className="screen-only">
          <button
            type="button"
            className="plain"
            aria-label={`Set by hand: ${title}, ${shortDate(day.date)}`}
            onClick={() => setEditing(true)}
          >
            Set by hand
          </button>
        </div>
      )}
    </div>
  );
}

function askedTitle({ method }: SeasonView, askedId: string): string {
  const groups = method.phases.flatMap(({ days }) => days.flatMap(({ groups: asked }) => asked));
  return groups.find(({ id }) => id === askedId)?.title ?? askedId;
}
