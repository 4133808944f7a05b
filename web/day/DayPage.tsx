import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Day, Group } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { GroupSection } from './GroupSection.tsx';
import { SolveBar } from './SolveBar.tsx';
import { startingGroup } from './startingPoints.ts';
import { useDayDraft } from './useDayDraft.ts';
import { useSolving } from './useSolving.ts';

const mostGroups = 8;

/** One training day: its groups, the loads that were worked out for it, and the way to its papers. */
export function DayPage({ kept }: { kept: Day }) {
  const draft = useDayDraft(kept);
  const solving = useSolving(draft);
  const { day, change } = draft;
  const say = useToast();

  const putGroup = (group: Group) =>
    change((now) => ({ ...now, groups: now.groups.map((g) => (g.id === group.id ? group : g)) }));
  const leaveOut = (group: Group) => {
    const before = day.groups;
    change((now) => ({ ...now, groups: now.groups.filter((g) => g.id !== group.id) }));
    say(`Removed ${group.title}.`, () => change((now) => ({ ...now, groups: before })));
  };
  return (
    <article className="stack day">
      <DayHead day={day} change={change} />
      <SolveBar draft={draft} solving={solving} />
      {day.groups.map((group) => (
        <GroupSection
          key={group.id}
          {...{ day, group }}
          solving={solving}
          onChange={putGroup}
          onRemove={() => leaveOut(group)}
        />
      ))}
      {day.groups.length < mostGroups && (
        <AddGroup onAdd={(lift) => change((now) => withGroup(now, lift))} first={day.groups.length === 0} />
      )}
      {solving.prescription && <KnownLegend />}
    </article>
  );
}

function DayHead({ day, change }: { day: Day; change: (how: (day: Day) => Day) => void }) {
  const days = useRecords('day');
  const [, go] = useLocation();
  const [open, setOpen] = useState(false);
  const say = useToast();
  const copy = async () => {
    const { id: _, ...fields } = day;
    try {
      const made = await days.create(fields);
      go(`/${made.id}`);
      say(`This is a copy of ${day.title || longDate(day.date)}: give it its own date.`);
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
          <div className="row">
            <button type="button" onClick={() => void copy()}>
              Copy this day
            </button>
            <button type="button" onClick={() => void remove()}>
              Remove this day
            </button>
          </div>
        </div>
      )}
    </header>
  );
}

function AddGroup(props: { first: boolean; onAdd: (lift: Lift) => void }) {
  const [lift, setLift] = useState<Lift>('squat');
  return (
    <section className="stack ruled screen-only">
      {props.first && (
        <>
          <h2>Nobody trains yet</h2>
          <p>A group does one lift together: it shares a start, an aim, and the racks. Add the first one.</p>
        </>
      )}
      <div className="row">
        <SelectField label="Lift" value={lift} options={liftWords} onChange={setLift} />
        <button type="button" onClick={() => props.onAdd(lift)}>
          Add a group
        </button>
      </div>
    </section>
  );
}

function withGroup(day: Day, lift: Lift): Day {
  const taken = new Set(day.groups.map((group) => group.id));
  let number = day.groups.length + 1;
  while (taken.has(`group-${number}`)) number += 1;
  const work = day.groups[0]?.work ?? 'speed';
  return { ...day, groups: [...day.groups, startingGroup(`group-${number}`, work, lift, 0.36)] };
}
