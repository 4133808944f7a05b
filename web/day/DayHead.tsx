import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { pointsWords } from '#contract/day/raisedAim.ts';
import type { Day } from '#contract/records/day.ts';
import { longDate, shortDate } from '#contract/words/dayWords.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { weekOn } from './weekOn.ts';

/** Date, title and note of a day, the way to all days, and a copy a week on. */
export function DayHead({ day, change }: { day: Day; change: (how: (day: Day) => Day) => void }) {
  const days = useRecords('day');
  const [, go] = useLocation();
  const [open, setOpen] = useState(false);
  const say = useToast();
  const [more, setMore] = useState<Record<string, number>>({});
  // A zone of speed has no percentages.
  const raisable = day.groups.filter(({ aim }) => aim.by !== 'speed');
  const moreOf = (groupId: string) => more[groupId] ?? 0;
  const copy = async () => {
    try {
      const made = await days.create(weekOn(day, moreOf));
      const points = raisable.length === 1 ? moreOf(raisable[0]!.id) : 0;
      const raised = points === 0 ? '' : `, ${pointsWords(points)}`;
      go(`/${made.id}`);
      say(`This is ${longDate(made.date)}, a copy of ${shortDate(day.date)}${raised}.`);
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    }
  };
  const remove = async () => {
    await days.remove(day.id, day.title || longDate(day.date));
    go('/');
  };
  return (
    <header className="stack tight">
      <div className="row ends base day-head">
        <h1 className="day-date">
          {longDate(day.date)}
          {day.title && <span className="day-title">{day.title}</span>}
        </h1>
        {day.note && <p className="day-note quiet">{day.note}</p>}
        <div className="row screen-only">
          <Link href="/" className="button all-days">
            All days
          </Link>
          <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
            Date, title, copy
          </button>
        </div>
      </div>
      {open && (
        <div className="stack ruled">
          <div className="fields">
            <TextField
              label="Date"
              type="date"
              value={day.date}
              onChange={(date) => date && change((now) => ({ ...now, date }))}
            />
            <TextField
              label="Title"
              value={day.title}
              onChange={(title) => change((now) => ({ ...now, title }))}
            />
            <TextField
              label="Note for the sheet"
              value={day.note}
              maxLength={2000}
              onChange={(note) => change((now) => ({ ...now, note }))}
            />
          </div>
          <div className="copy-on">
            <div className="stack tight">
              {raisable.map(({ id, title }) => (
                <FigureField
                  key={id}
                  label={raisable.length === 1 ? 'More of the maximum' : `More of the maximum, ${title}`}
                  value={moreOf(id)}
                  word="points"
                  per={100}
                  min={-0.3}
                  max={0.3}
                  onChange={(points) => setMore({ ...more, [id]: points })}
                  hint="5 turns 50 % into 55 %. Bars set by hand are then worked out again."
                />
              ))}
            </div>
            <button type="button" onClick={() => void copy()}>
              Copy a week on
            </button>
          </div>
          <div>
            <button type="button" className="plain" onClick={() => void remove()}>
              Remove this day
            </button>
          </div>
        </div>
      )}
    </header>
  );
}
