import { formatQuantity } from '#core/units/formatQuantity.ts';
import { fromSi } from '#core/units/units.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { barTable, collarTable, discTable } from './ironTables.ts';
import { RecordTable } from './RecordTable.tsx';

/** Bars, collars and discs: what is loaded by mass. */
export function IronPage({ gear }: { gear: Gear }) {
  const { mass, length } = useUnits();
  const { records } = gear;
  const massText = (kg: number) => fromSi(kg, mass).toFixed(2);
  const face = (kg: number) => formatQuantity(kg, mass);
  return (
    <div className="stack loose">
      <h1>Bars, collars and discs</h1>
      <RecordTable
        table={barTable}
        rows={records.bar}
        columns={[
          { key: 'label', head: 'bar', cell: ({ label }) => label },
          {
            key: 'mass',
            head: 'mass',
            numeric: true,
            cell: ({ massKg, weighed }) => (
              <Known
                value={massText(massKg)}
                unit={mass}
                known={weighed ? 'measured' : 'assumed'}
                {...(weighed ? {} : { why: "The maker's figure: put the bar on a scale." })}
              />
            ),
          },
          { key: 'note', head: 'note', wideOnly: true, cell: ({ note }) => note },
        ]}
      />
      <RecordTable
        table={collarTable}
        rows={records.collarPair}
        columns={[
          { key: 'label', head: 'collars', cell: ({ label }) => label },
          {
            key: 'mass',
            head: `both together ${mass}`,
            numeric: true,
            cell: ({ pairMassKg }) => massText(pairMassKg),
          },
          { key: 'pairs', head: 'pairs', numeric: true, cell: ({ pairs }) => pairs },
          { key: 'note', head: 'note', wideOnly: true, cell: ({ note }) => note },
        ]}
      />
      <RecordTable
        table={discTable}
        rows={records.disc.toSorted((x, y) => y.faceMassKg - x.faceMassKg)}
        columns={[
          { key: 'face', head: 'disc', cell: ({ faceMassKg }) => face(faceMassKg) },
          { key: 'pairs', head: 'pairs', numeric: true, cell: ({ pairs }) => pairs },
          {
            key: 'true',
            head: 'weighs',
            numeric: true,
            cell: ({ faceMassKg, weighedMassKg }) => (
              <Known
                value={massText(weighedMassKg ?? faceMassKg)}
                unit={mass}
                known={weighedMassKg === null ? 'assumed' : 'measured'}
                {...(weighedMassKg === null ? { why: 'As its face says: put one disc on a scale.' } : {})}
              />
            ),
          },
          {
            key: 'size',
            head: `across × thick ${length}`,
            numeric: true,
            wideOnly: true,
            cell: ({ diameterM, thicknessM }) =>
              diameterM === null || thicknessM === null
                ? ''
                : `${fromSi(diameterM, length).toFixed(1)} × ${fromSi(thicknessM, length).toFixed(2)}`,
          },
          { key: 'note', head: 'note', wideOnly: true, cell: ({ note }) => note },
        ]}
      />
    </div>
  );
}
