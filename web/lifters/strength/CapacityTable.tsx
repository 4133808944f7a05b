import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import type { Belief } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { percent } from '#contract/words/percent.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';

type Stretch = CapacityReport['stretches'][number];

/** The picture of work capacity over the season as a table, for those who read rather than look. */
export function CapacityTable({ stretches }: { stretches: readonly Stretch[] }) {
  const shares = stretches.find(({ told }) => told !== null)?.told?.reps.map(({ share }) => share) ?? [];
  const columns: Column<Stretch>[] = [
    { key: 'to', head: 'Twelve weeks to', cell: ({ to }) => dateText(to) },
    { key: 'sets', head: 'Sets that tell', numeric: true, cell: ({ setsThatTell }) => setsThatTell },
    ...shares.flatMap((share): Column<Stretch>[] => {
      const at = `at ${percent(share)}`;
      const of = ({ told }: Stretch) => told?.reps.find((one) => one.share === share)?.belief;
      return [
        { key: at, head: `Reps ${at}`, numeric: true, cell: (row) => middle(of(row)) },
        {
          key: `${at} 95`,
          head: '95 % range',
          numeric: true,
          wideOnly: true,
          cell: (row) => range(of(row)),
        },
      ];
    }),
  ];
  return (
    <details className="screen-only">
      <summary>The same as a table</summary>
      <DataTable
        label="Work capacity over the season"
        columns={columns}
        rows={stretches.toReversed()}
        keyOf={({ to }) => to}
        nameOf={({ to }) => dateText(to)}
      />
    </details>
  );
}

function middle(reps: Belief | undefined): string {
  return reps === undefined ? 'tells too little' : reps.median.toFixed(1);
}

function range(reps: Belief | undefined): string {
  return reps === undefined ? '' : `${reps.low95.toFixed(1)} to ${reps.high95.toFixed(1)}`;
}
