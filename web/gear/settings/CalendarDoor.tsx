import './calendar.css';
import { useEffect, useRef, useState } from 'react';
import type { Club } from '#contract/records/club.ts';
import type { Lifter } from '#contract/records/lifters.ts';
import { calendarPath, useCalendar } from '#web/api/useCalendar.ts';
import { localToday } from '#web/parts/localToday.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TelephoneAddress } from './TelephoneAddress.tsx';

/** The training days for any calendar: as a file, and at an address that a telephone comes back to. */
export function CalendarDoor({ club, lifters }: { club: Club; lifters: readonly Lifter[] }) {
  const { data, error } = useCalendar();
  const [whose, setWhose] = useState(everybody);
  const section = useRef<HTMLElement>(null);
  // The list of days leads here, past the settings.
  useEffect(() => {
    if (window.location.hash === `#${place}`) section.current?.scrollIntoView();
  }, []);
  const lifterId = whose === everybody ? null : whose;
  const url = data?.addresses.find((one) => one.lifterId === lifterId)?.url;
  return (
    <section ref={section} id={place} className="stack ruled">
      <h2>Calendar</h2>
      <p>
        The training days for any calendar: lifts, aims, sets and reps
        {club.namesInCalendar && ', and who is there by first name'}. No loads
        {club.namesInCalendar ? ' and no notes' : ', no notes and nobody’s name'} are in it. A day that you
        remove is shown as cancelled.
      </p>
      <div className="row">
        <SelectField
          label="Whose days"
          value={whose}
          options={[
            { value: everybody, word: 'The whole club' },
            ...here(lifters, localToday(club.timeZone)).map(({ id, name }) => ({ value: id, word: name })),
          ]}
          onChange={setWhose}
        />
        <a className="button" href={calendarPath(lifterId)} download="calendar.ics">
          Download the calendar file
        </a>
      </div>
      <h3>On telephones</h3>
      {error && <p className="stop">The addresses could not be read: {error.message}</p>}
      {data?.at === null && (
        <p>
          A telephone cannot subscribe now: the program answers this computer alone. Start it with{' '}
          <code>rackwright serve --calendar-on lan</code>, and the address to subscribe to stands here.
          Telephones then reach the calendar and nothing else.
        </p>
      )}
      {url && <TelephoneAddress url={url} whose={lifterId === null ? 'the club’s' : 'this lifter’s'} />}
    </section>
  );
}

/** Where on the page it is, for links. */
const place = 'calendar';
/** No id that the store gives. */
const everybody = '';

function here(lifters: readonly Lifter[], today: string): Lifter[] {
  return lifters
    .filter(({ leftOn }) => leftOn === null || leftOn > today)
    .toSorted((a, b) => a.name.localeCompare(b.name));
}
