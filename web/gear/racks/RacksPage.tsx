import { Link } from 'wouter';
import { RecordSheet } from '#web/gear/sheets/RecordSheet.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { liftWord } from '#web/parts/liftWords.ts';
import { rackSheet } from './rackSheets.ts';

/** All racks; each opens its points and hookups. */
export function RacksPage({ gear }: { gear: Gear }) {
  const { records } = gear;
  return (
    <div className="stack loose">
      <h1>Racks</h1>
      <RecordSheet
        sheet={rackSheet(records)}
        rows={records.rack}
        columns={[
          { key: 'label', head: 'rack', cell: ({ label }) => label },
          {
            key: 'lifts',
            head: 'lifts',
            wideOnly: true,
            cell: ({ lifts }) => lifts.map(liftWord).join(', '),
          },
          {
            key: 'bar',
            head: 'bar',
            wideOnly: true,
            cell: ({ barId }) => records.bar.find(({ id }) => id === barId)?.label ?? 'none yet',
          },
          {
            key: 'open',
            head: 'points and hookups',
            cell: ({ id, label }) => (
              <Link
                href={`/racks/${id}`}
                className="button"
                aria-label={`Points and hookups of ${label}`}
                onClick={(event) => event.stopPropagation()}
              >
                {count(records.anchor, id)} points, {count(records.hookup, id)} hookups
              </Link>
            ),
          },
        ]}
      />
    </div>
  );
}

function count(rows: readonly { rackId: string }[], id: string): number {
  return rows.filter(({ rackId }) => rackId === id).length;
}
