import { Link } from 'wouter';
import type { AnchorRecord, Rack } from '#contract/records/gear.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { signedText } from '#contract/words/signedText.ts';
import { fromSi } from '#core/units/units.ts';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import type { Gear } from '#web/gear/state/useGear.ts';
import { RecordTable } from '#web/gear/tables/RecordTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { hookupTable } from './hookupTables.ts';
import { RackDrawing } from './RackDrawing.tsx';
import { anchorTable } from './rackTables.ts';
import { ScaleReadings } from './ScaleReadings.tsx';

/** One rack: its points drawn to scale while they are typed, the hookups in use, and what a scale said. */
export function RackPage({ gear, rack }: { gear: Gear; rack: Rack }) {
  const units = useUnits();
  const { heightM } = useChosen(gear);
  const { records } = gear;
  const anchors = records.anchor.filter(({ rackId }) => rackId === rack.id);
  const hookups = records.hookup.filter(({ rackId }) => rackId === rack.id);
  const inLength = (m: number) => signedText(fromSi(m, units.length), { decimals: 1 });
  return (
    <article className="stack loose">
      <header className="stack">
        <Link href="/racks">All racks</Link>
        <h1>{rack.label}</h1>
        {rack.note && <p>{rack.note}</p>}
      </header>
      <RecordTable
        table={anchorTable(rack.id)}
        rows={anchors}
        picture={(draft, openId) => (
          <RackDrawing
            rack={rack}
            anchors={drawnWith(anchors, draft, openId)}
            usedIds={new Set(hookups.map(({ anchorId }) => anchorId))}
            openId={openId ?? newId}
            barHeightM={heightM}
            lengthUnit={units.length}
          />
        )}
        columns={[
          { key: 'label', head: 'point', cell: ({ label }) => label },
          { key: 'z', head: `up ${units.length}`, numeric: true, cell: ({ zM }) => inLength(zM) },
          { key: 'x', head: `to the front ${units.length}`, numeric: true, cell: ({ xM }) => inLength(xM) },
          {
            key: 'y',
            head: `sideways ${units.length}`,
            numeric: true,
            wideOnly: true,
            cell: ({ yM }) => inLength(yM),
          },
          {
            key: 'rated',
            head: 'may carry, one side',
            numeric: true,
            cell: ({ ratedLoadN }) =>
              ratedLoadN === null ? (
                <span className="stop">not known</span>
              ) : (
                <Known
                  value={fromSi(ratedLoadN, units.mass === 'kg' ? 'kgf' : 'lbf').toFixed(0)}
                  unit={units.mass}
                  known="measured"
                />
              ),
          },
        ]}
      />
      <RecordTable
        table={hookupTable(rack.id, records)}
        rows={hookups}
        columns={[
          { key: 'label', head: 'hookup', cell: ({ label }) => label },
          {
            key: 'anchor',
            head: 'on',
            cell: ({ anchorId }) => anchors.find(({ id }) => id === anchorId)?.label ?? '',
          },
          {
            key: 'way',
            head: 'the loop runs',
            cell: ({ way, spentM }) =>
              way === 'choked' && spentM !== null
                ? `choked, ${inLength(spentM)} ${units.length} used up`
                : way,
          },
          {
            key: 'lifts',
            head: 'used for',
            wideOnly: true,
            cell: ({ lifts }) => lifts.map(liftWord).join(', '),
          },
        ]}
      />
      <ScaleReadings gear={gear} hookups={hookups} />
    </article>
  );
}

const newId = 'new';

/** The kept points, with the one in the form as it is being typed. */
function drawnWith(
  anchors: readonly AnchorRecord[],
  draft: { label: string; xM: number | null; zM: number | null } | null,
  openId: string | null,
) {
  if (draft === null) return anchors;
  const typed = { id: openId ?? newId, label: draft.label, xM: draft.xM ?? 0, zM: draft.zM };
  return [...anchors.filter(({ id }) => id !== openId), typed];
}
