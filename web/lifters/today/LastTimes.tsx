import { useMemo } from 'react';
import { dateText } from '#contract/words/dateText.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { lastSessions, type Session } from '#reckon/log/sessionsOf.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useSessionColumns } from './SessionCells.tsx';

/** How many setups are shown before the rest is asked for. */
const shownAtFirst = 6;

/** The last time in each setup, the newest first. */
export function LastTimes({ sessions, today }: { sessions: readonly Session[]; today: string }) {
  const [shown, setShown] = useInAddress('setups');
  const { setup, done, speed } = useSessionColumns();
  const rows = useMemo(() => lastSessions(sessions), [sessions]);
  const columns: Column<Session>[] = [
    setup,
    {
      key: 'on',
      head: 'Last time',
      cell: ({ doneOn }) => (
        <span className="lifters-date">
          {dateText(doneOn)} <span className="lifters-ago">{agoWords(doneOn, today)}</span>
        </span>
      ),
    },
    done,
    speed,
  ];
  return (
    <section className="stack tight ruled" aria-labelledby="times-title">
      <h2 id="times-title">Last time in each setup</h2>
      <DataTable
        label="Last time in each setup"
        columns={columns}
        rows={shown === 'all' ? rows : rows.slice(0, shownAtFirst)}
        keyOf={({ key }) => key}
        nameOf={({ sets: [first] }) => (first ? liftWord(first.lift) : '')}
      />
      {rows.length > shownAtFirst && (
        <div>
          <button
            type="button"
            className="plain screen-only"
            onClick={() => setShown(shown === 'all' ? '' : 'all')}
          >
            {shown === 'all' ? 'Show the newest only' : `Show all ${rows.length} setups`}
          </button>
        </div>
      )}
    </section>
  );
}

const MS_A_DAY = 86_400_000;

/** "today", "5 days ago", "3 weeks ago". */
function agoWords(date: string, today: string): string {
  const days = Math.round((Date.parse(today) - Date.parse(date)) / MS_A_DAY);
  if (days <= 0) return 'today';
  if (days < 14) return days === 1 ? 'yesterday' : `${days} days ago`;
  return `${Math.round(days / 7)} weeks ago`;
}
