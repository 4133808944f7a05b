import { Link, useLocation } from 'wouter';
import type { Day } from '#contract/records/day.ts';
import { longDate, shortDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { FindFields } from '#web/parts/FindFields.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { asTheyCome, useFound } from '#web/parts/useFound.ts';
import { workWords } from '#web/setup/startingPoints.ts';
import { FirstSteps } from './FirstSteps.tsx';

/** Every training day, the next ones first, in the order they come. */
export function DayList() {
  const { day: days } = useClub();
  const club = useClubSettings();
  const [, go] = useLocation();
  const today = localToday(club.timeZone);
  const found = useFound(days, textsOf, [asTheyCome]);
  const coming = found.rows.filter((day) => day.date >= today).sort((a, b) => a.date.localeCompare(b.date));
  const gone = found.rows.filter((day) => day.date < today).sort((a, b) => b.date.localeCompare(a.date));
  const newDay = (
    <Link href="/new" className="button strong">
      New day
    </Link>
  );
  if (days.length === 0) {
    return (
      <div className="stack loose">
        <h1>Days</h1>
        <FirstSteps action={newDay} />
      </div>
    );
  }
  return (
    <div className="stack loose">
      <div className="row ends">
        <h1>Days</h1>
        <div className="row">
          <Link href="~/gear/club#calendar">In your calendar</Link>
          {newDay}
        </div>
      </div>
      <FindFields found={found} label="Title, note, work or date" />
      {found.rows.length === 0 && <p>No day matches that.</p>}
      <DayTable label="Days to come" days={coming} onOpen={(day) => go(`/${day.id}`)} />
      <DayTable label="Days gone by" days={gone} onOpen={(day) => go(`/${day.id}`)} />
    </div>
  );
}

const columns: readonly Column<Day>[] = [
  { key: 'date', head: 'Date', cell: dateCell },
  { key: 'title', head: 'Day', cell: (day) => day.title || longDate(day.date) },
  { key: 'work', head: 'Work', cell: worksOf, wideOnly: true },
  {
    key: 'lifters',
    head: 'Lifters',
    numeric: true,
    cell: (day) => new Set(day.groups.flatMap((g) => g.places.map((p) => p.lifterId))).size,
  },
];

function textsOf(day: Day): string[] {
  return [day.title, day.note, longDate(day.date), worksOf(day)];
}

function dateCell(day: Day) {
  return <strong>{shortDate(day.date)}</strong>;
}

function DayTable(props: { label: string; days: readonly Day[]; onOpen: (day: Day) => void }) {
  if (props.days.length === 0) return null;
  return (
    <section className="stack tight">
      <h2>{props.label}</h2>
      <DataTable
        label={props.label}
        rows={props.days}
        keyOf={(day) => day.id}
        nameOf={(day) => day.title || longDate(day.date)}
        onOpen={props.onOpen}
        columns={columns}
      />
    </section>
  );
}

function worksOf(day: Day): string {
  return day.groups
    .map((group) => `${liftWord(group.lift)}, ${workWords.find((w) => w.value === group.work)?.word}`)
    .join('; ');
}
