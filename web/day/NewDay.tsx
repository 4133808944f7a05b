import { type FormEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Group } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import { daysLater, shortDate } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { groupFromWork, startingGroup, usualBoxM, workWords } from '#web/setup/startingPoints.ts';
import { everybodyBack } from './here/whoIsHere.ts';

/** A new training day: when, and what it begins from. Everything can be changed afterwards. */
export function NewDay() {
  const records = useClub();
  const club = useClubSettings();
  const days = useRecords('day');
  const [, go] = useLocation();
  const [date, setDate] = useState(() => daysLater(localToday(club.timeZone), 1));
  const [from, setFrom] = useState<string>('speed');
  const [lift, setLift] = useState<Lift>('squat');
  const [wrong, setWrong] = useState<string | null>(null);
  const earlier = [...records.day].sort((a, b) => b.date.localeCompare(a.date));
  const copied = earlier.find((day) => day.id === from);
  const kept = records.workTemplate.find(({ id }) => id === from);

  const begin = async (event: FormEvent) => {
    event.preventDefault();
    const boxes = boxHeights(records.box).map((box) => box.heightM);
    const boxM = boxes.sort((a, b) => Math.abs(a - usualBoxM) - Math.abs(b - usualBoxM))[0] ?? null;
    try {
      const { id } = await days.create(
        copied
          ? {
              date,
              title: copied.title,
              groups: copied.groups.map(everybodyBack),
              oneSetPull: copied.oneSetPull,
              note: copied.note,
            }
          : {
              date,
              title: kept?.label ?? '',
              groups: [
                kept
                  ? groupFromWork('group-1', kept)
                  : startingGroup('group-1', from as Group['work'], lift, boxM),
              ],
            },
      );
      go(`/${id}`);
    } catch (error) {
      setWrong(error instanceof Error ? error.message : String(error));
    }
  };

  return (
    <form className="stack loose new-day" onSubmit={(event) => void begin(event)}>
      <h1>New day</h1>
      <TextField label="Date" type="date" value={date} onChange={setDate} error={wrong} />
      <fieldset className="starts">
        <legend className="field-label">Begin from</legend>
        {workWords.map((work) => (
          <label key={work.value} className="start-choice">
            <input
              type="radio"
              name="from"
              checked={from === work.value}
              onChange={() => setFrom(work.value)}
            />
            <strong>A {work.word} day.</strong> <span className="quiet">{work.says}</span>
          </label>
        ))}
        {records.workTemplate.length > 0 && (
          <label className="start-choice">
            <input
              type="radio"
              name="from"
              checked={kept !== undefined}
              onChange={() => setFrom(records.workTemplate[0]?.id ?? 'speed')}
            />
            <strong>Work that the club keeps.</strong>
            <span className="quiet">Lift, aim, sets and reps as they were kept; nobody is in it yet.</span>
          </label>
        )}
        {earlier.length > 0 && (
          <label className="start-choice">
            <input
              type="radio"
              name="from"
              checked={copied !== undefined}
              onChange={() => setFrom(earlier[0]?.id ?? 'speed')}
            />
            <strong>A copy of an earlier day.</strong>
            <span className="quiet">Groups, lifters, racks and what you fixed by hand come along.</span>
          </label>
        )}
      </fieldset>
      {kept && (
        <SelectField
          label="Kept work"
          value={from}
          onChange={setFrom}
          options={records.workTemplate.map(({ id, label }) => ({ value: id, word: label }))}
          hint={kept.note}
        />
      )}
      {copied && (
        <SelectField
          label="Day to copy"
          value={from}
          onChange={setFrom}
          options={earlier.map((day) => ({ value: day.id, word: `${shortDate(day.date)}, ${day.title}` }))}
        />
      )}
      {!kept && !copied && <SelectField label="Lift" value={lift} onChange={setLift} options={liftWords} />}
      <div className="row">
        <button type="submit" className="strong" disabled={days.busy}>
          Begin this day
        </button>
        <Link href="/">Back to the days</Link>
      </div>
    </form>
  );
}
