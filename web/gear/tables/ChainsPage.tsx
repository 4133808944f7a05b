import { fromSi } from '#core/units/units.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { chainTable } from './chainAndBoxTables.ts';
import { RecordTable } from './RecordTable.tsx';

/** Chains: what a pair weighs when it hangs free, and where it first leaves the floor. */
export function ChainsPage({ gear }: { gear: Gear }) {
  const { mass, length } = useUnits();
  const inMass = (kg: number) => fromSi(kg, mass).toFixed(2);
  const inLength = (m: number) => fromSi(m, length).toFixed(1);
  return (
    <div className="stack loose">
      <RecordTable
        heading="h1"
        table={chainTable}
        rows={gear.records.chainPair}
        columns={[
          { key: 'label', head: 'chains', cell: ({ label }) => label },
          {
            key: 'metre',
            head: `${mass} a metre, one chain`,
            numeric: true,
            cell: ({ massPerMetreKg }) => inMass(massPerMetreKg),
          },
          {
            key: 'length',
            head: `length ${length}`,
            numeric: true,
            wideOnly: true,
            cell: ({ lengthM }) => inLength(lengthM),
          },
          {
            key: 'below',
            head: `below the bar ${length}`,
            numeric: true,
            wideOnly: true,
            cell: ({ attachBelowBarM }) => inLength(attachBelowBarM),
          },
          {
            key: 'whole',
            head: `a pair hanging free ${mass}`,
            numeric: true,
            cell: ({ massPerMetreKg, lengthM }) => inMass(2 * massPerMetreKg * lengthM),
          },
          {
            key: 'from',
            head: `all off the floor from ${length}`,
            numeric: true,
            wideOnly: true,
            cell: ({ lengthM, attachBelowBarM }) => inLength(lengthM + attachBelowBarM),
          },
          { key: 'pairs', head: 'pairs', numeric: true, cell: ({ pairs }) => pairs },
          { key: 'note', head: 'note', wideOnly: true, cell: ({ note }) => note },
        ]}
      />
    </div>
  );
}
