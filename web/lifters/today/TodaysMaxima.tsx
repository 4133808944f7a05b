import { Link } from 'wouter';
import type { Lift } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord, liftWord, liftWords } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { useProjection } from '#web/api/useProjection.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterView } from '../LifterView.ts';
import { straightBest } from '../lifterRecords.ts';
import { partAddress } from '../partAddress.ts';
import { usualMeetDay } from '../projection/usualMeetDay.ts';

interface Row {
  lift: Lift;
  /** Null: not worked out, or nothing to work it out from. */
  now: Belief | null;
  atMeet: Belief | null;
  best: Best | null;
  lastSetOn: string | null;
}

/** Today's maximum of each lift with its range, and what it may be at a meet four weeks on. */
export function TodaysMaxima({ view }: { view: LifterView }) {
  const { own, today, estimates, hasEstimates } = view;
  const { id: lifterId, equipment } = own.lifter;
  const { mass } = useUnits();
  const on = usualMeetDay(today);
  const { data: atMeet } = useProjection({ lifterId, on, equipment, taperPercent: '0' }, hasEstimates);
  const rows = liftWords.map(({ value: lift }): Row => {
    const estimate = estimates.find((one) => one.lift === lift);
    return {
      lift,
      now: estimate?.maxKg ?? null,
      atMeet: atMeet?.find((one) => one.lift === lift)?.maxKg ?? null,
      best: straightBest(own.best, lift),
      lastSetOn: estimate?.lastSetOn ?? null,
    };
  });
  const columns: Column<Row>[] = [
    { key: 'lift', head: 'Lift', cell: ({ lift }) => liftWord(lift) },
    { key: 'now', head: 'Maximum, raw', numeric: true, cell: ({ now }) => <Maximum belief={now} lead /> },
    {
      key: 'meet',
      head: `At a meet on ${dateText(on)}, ${equipmentWord(equipment)}`,
      numeric: true,
      cell: (row) => <Maximum belief={row.atMeet} />,
    },
    {
      key: 'best',
      head: 'Best written down',
      numeric: true,
      wideOnly: true,
      cell: ({ best }) =>
        best === null ? '–' : `${written(best.setup.barKg, mass, 1)} ${mass}, ${dateText(best.doneOn)}`,
    },
    {
      key: 'last',
      head: 'Last set',
      wideOnly: true,
      cell: ({ lastSetOn }) => (lastSetOn === null ? '–' : dateText(lastSetOn)),
    },
  ];
  return (
    <section className="stack tight ruled lifters-maxima" aria-labelledby="maxima-title">
      <h2 id="maxima-title">Today's maximum</h2>
      <DataTable
        label="Today's maximum"
        columns={columns}
        rows={rows}
        keyOf={({ lift }) => lift}
        nameOf={({ lift }) => liftWord(lift)}
      />
      <SlipsAsked view={view} />
      <p className="small quiet">
        Straight weight, by the whole log; the range holds it 80 % of the time. The meet is taken to be in
        four weeks: <Link href={partAddress(lifterId, 'meet')}>choose its day</Link>.
      </p>
    </section>
  );
}

/** Sets that are kept out until somebody looked: the maximum above goes without them. */
function SlipsAsked({ view }: { view: LifterView }) {
  const { own, sets, estimates } = view;
  const kept = new Set(
    [...sets.filter(({ struckAt }) => struckAt === null), ...own.best].map(({ id }) => id),
  );
  return estimates.map(({ lift, slips }) => {
    const count = slips.flatMap(({ ids }) => ids).filter((id) => kept.has(id)).length;
    if (count === 0) return null;
    return (
      <p key={lift} className="stop">
        {count === 1 ? 'A set' : `${count} sets`} of the {liftWord(lift)} {count === 1 ? 'looks' : 'look'} as
        if written down in another unit, and {count === 1 ? 'is' : 'are'} kept out until you have looked:{' '}
        <Link href={`${partAddress(own.lifter.id, 'strength')}?${new URLSearchParams({ lift })}`}>
          look at {count === 1 ? 'it' : 'them'}
        </Link>
        .
      </p>
    );
  });
}

function Maximum({ belief, lead }: { belief: Belief | null; lead?: true }) {
  const { mass } = useUnits();
  if (belief === null) return '–';
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  return (
    <Known
      value={whole(belief.median)}
      unit={mass}
      known="estimated"
      interval={`${whole(belief.low80)} to ${whole(belief.high80)}`}
      size={lead ? 'lead' : 'row'}
    />
  );
}
