import { fromSi } from '#core/units/units.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BoxStack } from './BoxStack.tsx';
import { boxTable } from './chainAndBoxTables.ts';
import { RecordTable } from './RecordTable.tsx';

/** Boxes to sit on and mats that raise them, drawn to scale. */
export function BoxesPage({ gear }: { gear: Gear }) {
  const { length } = useUnits();
  const boxes = gear.records.box.toSorted((x, y) => x.sort.localeCompare(y.sort) || x.heightM - y.heightM);
  return (
    <div className="stack loose">
      <RecordTable
        heading="h1"
        table={boxTable}
        rows={boxes}
        picture={() => <BoxStack boxes={boxes} lengthUnit={length} />}
        columns={[
          { key: 'label', head: 'label', cell: ({ label }) => label },
          { key: 'sort', head: 'is a', cell: ({ sort }) => sort },
          {
            key: 'height',
            head: `height ${length}`,
            numeric: true,
            cell: ({ heightM }) => fromSi(heightM, length).toFixed(1),
          },
          { key: 'pieces', head: 'pieces', numeric: true, cell: ({ pieces }) => pieces },
          { key: 'note', head: 'note', wideOnly: true, cell: ({ note }) => note },
        ]}
      />
    </div>
  );
}
