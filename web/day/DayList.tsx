import { Link, useLocation } from 'wouter';
import type { Day } from '#contract/records/day.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { longDate, shortDate } from '#web/parts/dayWords.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { liftWord } from '#web/parts/liftWords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { workWords } from './startingPoints.ts';

/** Every training day, the next ones first, in the order they come. */
export function DayList() {
  const { day: days, lifter: lifters } = useClub();
  const club = useClubSettings();
  const [, go] = useLocation();
  const today = localToday(club.timeZone);
  const coming = days.filter((day) => day.date >= today).sort((a, b) => a.date.localeCompare(b.date));
  const gone = days.filter((day) => day.date < today).sort((a, b) => b.date.localeCompare(a.date));
  const newDay = (
    <Link href="/new" className="button strong">
      New day
    </Link>
  );
  if (days.length === 0) {
    return (
      <div className="stack loose">
        <h1>Days</h1>
        <EmptyState
          title="The first training day"
          steps={[
            'Pick the date and what the day is for: speed, maximal effort or repeated effort.',
            lifters.length === 0
              ? 'Add the lifters first, under Lifters: their bests say how strong they are.'
              : 'Put lifters on the racks, in the order in which they lift.',
            'Have the loads worked out: band, bar and box for every lifter, from the bands you measured.',
            'Print the sheet for the wall.',
          ]}
          action={newDay}
        />
      </div>
    );
  }
  return (
    <div className="stack loose">
      <div className="row ends">
        <h1>Days</h1>
        {newDay}
      </div>
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
