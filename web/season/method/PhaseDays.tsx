import { useRef } from 'react';
import { fieldOf } from '#contract/records/fields.ts';
import { type DayAsked, dayAsked, mostOf, type PhaseOfMethod } from '#contract/records/method.ts';
import { weekdayWord } from '#contract/words/dayWords.ts';
import { textLimits } from '#web/parts/limits.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { AnotherButton } from './AnotherButton.tsx';
import { BesideFields } from './BesideFields.tsx';
import { bareDay, freeWeekday, onWeekday, withDayOn } from './dayList.ts';
import { GroupFields, groupLine } from './GroupFields.tsx';
import { groupToBegin } from './groupToBegin.ts';
import { placeIn, useMethodFields } from './methodFields.ts';
import { OrderButtons } from './OrderButtons.tsx';
import { withCopyAfter } from './titledList.ts';
import type { InView } from './useInView.ts';

/** The training days of a phase, one of them in view: its place in the week, its groups, and what comes beside them. */
export function PhaseDays(props: {
  /** Path of the phase. */
  at: string;
  phase: PhaseOfMethod;
  inView: InView;
  onChange: (days: DayAsked[]) => void;
}) {
  const { phase, inView, onChange } = props;
  const { days } = phase;
  const at = Math.min(inView.day, days.length - 1);
  const day = days[at];
  const show = (next: DayAsked[], weekday: number) => {
    onChange(next);
    inView.showDay(next.findIndex((one) => one.weekday === weekday));
  };
  const free = freeWeekday(days, day?.weekday);
  return (
    <section className="stack season-whole season-part">
      <h3>Training days</h3>
      <div className="row">
        {free !== null && (
          <button
            type="button"
            onClick={() => inView.leave(() => show(withDayOn(days, bareDay, free), free))}
          >
            Add a day
          </button>
        )}
        {day && free !== null && (
          <button
            type="button"
            aria-label={`Copy ${day.title}`}
            onClick={() => inView.leave(() => show(withDayOn(days, day, free), free))}
          >
            Copy this day
          </button>
        )}
        {day && (
          <button
            type="button"
            className="plain"
            aria-label={`Leave out ${day.title}`}
            onClick={() => {
              onChange(days.toSpliced(at, 1));
              inView.showDay(Math.max(0, at - 1));
            }}
          >
            Leave this day out
          </button>
        )}
      </div>
      {day ? (
        <OneDay
          key={days.length}
          {...props}
          at={placeIn(placeIn(props.at, 'days'), at)}
          day={day}
          place={at}
          onMove={(weekday) => show(onWeekday(days, at, weekday), weekday)}
          onChange={(change) => onChange(days.with(at, { ...day, ...change }))}
        />
      ) : (
        <p>Nobody trains in this phase.</p>
      )}
    </section>
  );
}

function OneDay(props: {
  at: string;
  phase: PhaseOfMethod;
  day: DayAsked;
  place: number;
  onMove: (weekday: number) => void;
  inView: InView;
  onChange: (change: Partial<DayAsked>) => void;
}) {
  const { at, phase, day, place, inView, onChange } = props;
  const { days, waveWeeks } = phase;
  const { length } = useUnits();
  const field = useMethodFields(at);
  const { groups } = day;
  const another = useRef<HTMLButtonElement>(null);
  const hasRoom = groups.length < mostOf.groups;
  const put = (next: DayAsked['groups']) => onChange({ groups: next });
  return (
    <>
      <div className="fields">
        <div className="season-double">
          <SelectField
            label="Day in view"
            value={String(place)}
            options={days.map(({ weekday, title }, at) => ({
              value: String(at),
              word: `${weekdayWord(weekday)}: ${title}`,
            }))}
            onChange={(next) => inView.leave(() => inView.showDay(Number(next)))}
          />
        </div>
        <SelectField
          {...field('weekday', 'Day of the week')}
          value={String(day.weekday)}
          options={weekdays.map((weekday) => ({
            value: String(weekday),
            word: weekdayChoice(days, day, weekday),
          }))}
          onChange={(weekday) => props.onMove(Number(weekday))}
        />
        <TextField
          {...field('title', 'Title of the day')}
          {...textLimits(fieldOf('title', dayAsked.shape.title))}
          value={day.title}
          onChange={(title) => onChange({ title })}
        />
      </div>
      {groups.map((group, index) => {
        const path = placeIn(placeIn(at, 'groups'), index);
        const isOpen = inView.open.has(group.id);
        return (
          <section key={group.id} className="stack tight ruled" aria-label={group.title}>
            <div className="row ends base">
              <h4>{group.title}</h4>
              <p className="small">{groupLine(group)}</p>
              <button
                type="button"
                aria-expanded={isOpen}
                aria-label={`${isOpen ? 'Close' : 'Change'} ${group.title}`}
                onClick={() =>
                  isOpen
                    ? inView.leave(() => inView.setGroupOpen(group.id, false))
                    : inView.setGroupOpen(group.id, true)
                }
              >
                {isOpen ? 'Close' : 'Change'}
              </button>
            </div>
            {isOpen && (
              <>
                <OrderButtons
                  of={group.title}
                  list={groups}
                  at={index}
                  mayBeNone
                  withCopy={hasRoom ? () => withCopyAfter(groups, index, 'group') : null}
                  after={another}
                  onChange={put}
                />
                <GroupFields
                  at={path}
                  group={group}
                  waveWeeks={waveWeeks}
                  onChange={(next) => put(groups.with(index, next))}
                />
              </>
            )}
          </section>
        );
      })}
      {groups.length === 0 && <p className="quiet">No group of work with bar or bands on this day yet.</p>}
      <AnotherButton
        ref={another}
        hasRoom={hasRoom}
        onAdd={() => {
          const begun = groupToBegin(groups, 'speed', 'squat', length);
          put([...groups, begun]);
          inView.setGroupOpen(begun.id, true);
        }}
      >
        Add a group
      </AnotherButton>
      <BesideFields at={at} day={day} onChange={onChange} />
    </>
  );
}

const weekdays = [1, 2, 3, 4, 5, 6, 7];

/** A day of the week, and who would change places with the day that moves there. */
function weekdayChoice(days: readonly DayAsked[], day: DayAsked, weekday: number): string {
  const there = days.find((one) => one.weekday === weekday);
  const isOther = there !== undefined && there !== day;
  return isOther ? `${weekdayWord(weekday)}, changing places with ${there.title}` : weekdayWord(weekday);
}
