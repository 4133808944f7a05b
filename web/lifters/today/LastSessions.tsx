import { Link } from 'wouter';
import { dateText } from '#contract/words/dateText.ts';
import type { Session } from '#reckon/log/sessionsOf.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useSessionColumns } from './SessionCells.tsx';

const shown = 6;

/** What this lifter did last, a line for each setup of a day. */
export function LastSessions({ lifterId, sessions }: { lifterId: string; sessions: readonly Session[] }) {
  const { setup, done, speed } = useSessionColumns();
  const columns: Column<Session>[] = [
    {
      key: 'on',
      head: 'Date',
      cell: ({ doneOn }) => <span className="lifters-date">{dateText(doneOn)}</span>,
    },
    setup,
    done,
    speed,
  ];
  return (
    <section className="stack tight ruled" aria-labelledby="sessions-title">
      <div className="row ends">
        <h2 id="sessions-title">Last sessions</h2>
        <Link href={`~/log?${new URLSearchParams({ lifter: lifterId })}`} className="lifters-way">
          All in the log
        </Link>
      </div>
      <DataTable
        label="Last sessions"
        columns={columns}
        rows={sessions.slice(0, shown)}
        keyOf={({ doneOn, key }) => `${doneOn} ${key}`}
        nameOf={({ doneOn }) => dateText(doneOn)}
      />
    </section>
  );
}
