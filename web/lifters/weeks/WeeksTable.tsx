import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { fromSi } from '#core/units/units.ts';
import type { Session } from '#reckon/log/sessionsOf.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { straightWords } from '../strength/setWords.ts';
import { useSessionColumns } from '../today/SessionCells.tsx';

/** How many days are shown before the rest is asked for. */
const shownAtFirst = 8;

/** Every day of one setup: what was done, its speed, what its best set stands for, what was believed of strength by that day. */
export function WeeksTable(props: {
  sessions: readonly Session[];
  estimate: StrengthEstimate | null;
  standsFor: (session: Session) => StrengthEstimate['observations'][number] | undefined;
}) {
  const { sessions, estimate, standsFor } = props;
  const units = useUnits();
  const { mass } = units;
  const [shown, setShown] = useInAddress('days');
  const { done, speed } = useSessionColumns();
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  const columns: Column<Session>[] = [
    {
      key: 'on',
      head: 'Date',
      cell: ({ doneOn }) => <span className="lifters-date">{dateText(doneOn)}</span>,
    },
    done,
    { ...speed, wideOnly: false, head: 'Speed' },
    {
      key: 'straight',
      head: 'Best set as straight weight',
      numeric: true,
      cell: (session) => {
        const best = standsFor(session);
        return best ? straightWords(best, units) : '–';
      },
    },
    {
      key: 'maximum',
      head: 'Maximum of that week, straight',
      numeric: true,
      wideOnly: true,
      cell: ({ doneOn }) => {
        const then = estimate?.history.findLast(({ on }) => on <= doneOn);
        return then === undefined ? (
          '–'
        ) : (
          <Known
            value={whole(then.median)}
            unit={mass}
            known="estimated"
            interval={`${whole(then.low80)} to ${whole(then.high80)}`}
          />
        );
      },
    },
  ];
  return (
    <>
      <DataTable
        label="This setup over the weeks"
        columns={columns}
        rows={shown === 'all' ? sessions : sessions.slice(0, shownAtFirst)}
        keyOf={({ doneOn }) => doneOn}
        nameOf={({ doneOn }) => dateText(doneOn)}
      />
      {sessions.length > shownAtFirst && (
        <div>
          <button
            type="button"
            className="plain screen-only"
            onClick={() => setShown(shown === 'all' ? '' : 'all')}
          >
            {shown === 'all' ? 'Show the newest only' : `Show all ${sessions.length} days`}
          </button>
        </div>
      )}
    </>
  );
}
