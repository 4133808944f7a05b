import { Link } from 'wouter';
import { liftWord } from '#contract/words/liftWords.ts';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { RecordTable } from '#web/gear/tables/RecordTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { RackDrawing } from './RackDrawing.tsx';
import { rackTable } from './rackTables.ts';

/** All racks; each opens its points and hookups. */
export function RacksPage({ gear }: { gear: Gear }) {
  const { records } = gear;
  const { heightM } = useChosen(gear);
  const { length } = useUnits();
  return (
    <div className="stack loose">
      <RecordTable
        heading="h1"
        table={rackTable(records)}
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
                {counted(records.anchor, id, 'point')}, {counted(records.hookup, id, 'hookup')}
              </Link>
            ),
          },
        ]}
      />
      <div className="drifts">
        {records.rack.map((rack) => (
          <figure key={rack.id} className="rack-figure">
            <figcaption>
              <Link href={`/racks/${rack.id}`}>{rack.label}</Link>
            </figcaption>
            <RackDrawing
              rack={rack}
              anchors={records.anchor.filter(({ rackId }) => rackId === rack.id)}
              usedIds={new Set(records.hookup.map(({ anchorId }) => anchorId))}
              openId={null}
              barHeightM={heightM}
              lengthUnit={length}
            />
          </figure>
        ))}
      </div>
    </div>
  );
}

function counted(rows: readonly { rackId: string }[], id: string, word: string): string {
  const number = rows.filter(({ rackId }) => rackId === id).length;
  return `${number} ${number === 1 ? word : `${word}s`}`;
}
