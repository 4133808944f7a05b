import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { signedText } from '#contract/words/signedText.ts';
import { wearWord } from '#contract/words/wearSentence.ts';
import { fromSi } from '#core/units/units.ts';
import { lengthText } from '#web/charts/ChartUnits.ts';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import { pairPull } from '#web/gear/state/pairPull.ts';
import type { PairState } from '#web/gear/state/pairState.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { usePairsFound } from '#web/gear/state/usePairsFound.ts';
import { CsvDoor } from '#web/gear/tables/CsvDoor.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { FindFields } from '#web/parts/FindFields.tsx';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { ChooseHookup } from './ChooseHookup.tsx';
import { Gives } from './Gives.tsx';
import { ScaleDrawing } from './ScaleDrawing.tsx';

/** All band pairs: what is known of each, what it gives at the chosen place, which want a new measuring. */
export function BandsPage({ gear }: { gear: Gear }) {
  const [, go] = useLocation();
  const [retired, setRetired] = useState(false);
  const out = gear.pairs.filter(({ pair }) => pair.retiredOn !== null);
  const inUse = gear.pairs.filter(({ pair }) => pair.retiredOn === null);
  const columns = useBandColumns(gear);
  const found = usePairsFound(retired ? gear.pairs : inUse);
  if (gear.pairs.length === 0) return <FirstBand />;
  const due = inUse.filter((state) => state.sides.some(({ findings }) => findings.length > 0)).length;
  return (
    <section className="stack">
      <div className="row ends base">
        <h1>Bands</h1>
        <Link href="/bands/new" className="button strong">
          Add a pair
        </Link>
      </div>
      <p>
        {inUse.length} {inUse.length === 1 ? 'pair' : 'pairs'} in use
        {due > 0 ? `, ${due} of them due for the scale or a look.` : ', none due for the scale.'}
      </p>
      <ChooseHookup gear={gear} />
      <FindFields found={found} label="Label, width or note" />
      {found.rows.length === 0 && <p>No pair matches that.</p>}
      <DataTable
        label="Band pairs"
        columns={columns}
        rows={found.rows}
        keyOf={({ pair }) => pair.id}
        nameOf={({ pair }) => pair.label}
        onOpen={({ pair }) => go(`/bands/${pair.id}`)}
      />
      <div className="row ends">
        {out.length > 0 ? (
          <button type="button" className="plain" aria-pressed={retired} onClick={() => setRetired(!retired)}>
            {retired ? 'Hide retired pairs' : `Show retired pairs (${out.length})`}
          </button>
        ) : (
          <span />
        )}
      </div>
      <KnownLegend />
      <div className="csv-doors">
        <CsvDoor kind="bandPair" />
        <CsvDoor kind="bandReading" />
      </div>
    </section>
  );
}

function useBandColumns(gear: Gear): Column<PairState>[] {
  const units = useUnits();
  const { place, heightM } = useChosen(gear);
  const chart = chartUnits(units, gear.gravityMps2);
  return [
    {
      key: 'label',
      head: 'pair',
      cell: ({ pair }) => (
        <span className="pair-name">
          <strong>{pair.label}</strong> <span className="quiet">{pair.widthMm} mm</span>
          {pair.retiredOn && <span className="mark">retired</span>}
        </span>
      ),
    },
    {
      key: 'gives',
      head: 'gives, both bands',
      cell: (state) =>
        place && <Gives pull={pairPull(gear, state, place, heightM)} gravityMps2={gear.gravityMps2} />,
    },
    {
      key: 'nominal',
      head: `by habit ${units.mass}`,
      numeric: true,
      wideOnly: true,
      cell: ({ pair }) => (pair.nominalKg === null ? '' : fromSi(pair.nominalKg, units.mass).toFixed(1)),
    },
    {
      key: 'read',
      head: 'read to',
      numeric: true,
      wideOnly: true,
      cell: ({ sides }) => {
        const reads = sides.map(({ readToM }) => readToM ?? 0);
        const shortest = Math.min(...reads);
        return shortest > 0 ? lengthText(chart, shortest) : '';
      },
    },
    {
      key: 'differ',
      head: 'a over b',
      numeric: true,
      wideOnly: true,
      cell: ({ mismatch }) =>
        mismatch.share !== null && (
          <span className={mismatch.flagged ? 'stop' : ''}>
            {signedText(mismatch.share * 100, { decimals: 1, plus: true })} %
          </span>
        ),
    },
    { key: 'wants', head: 'wants a look', cell: (state) => <WantsWords state={state} /> },
  ];
}

function WantsWords({ state }: { state: PairState }) {
  // Both bands mostly want the same: each reason is said once.
  const reasons = new Map(state.sides.flatMap(({ findings }) => findings.map((found) => [found.why, found])));
  const words = new Set([...reasons.values()].map(wearWord));
  if (state.mismatch.flagged) words.add('a and b differ');
  return words.size === 0 ? null : <span className="stop">{[...words].join(', ')}</span>;
}

function FirstBand() {
  return (
    <div className="stack loose">
      <h1>Bands</h1>
      <EmptyState
        title="No bands yet: the first one comes from a scale"
        steps={[
          'Hang one band of a pair from a scale, with a few discs in it.',
          'Read its length on a tape, from end to end.',
          'Read the scale. Five such readings, from light to as long as you use it, and the load at every height is known for every lifter.',
        ]}
        action={
          <Link href="/bands/new" className="button strong">
            Add the first pair
          </Link>
        }
        drawing={<ScaleDrawing show="hang" />}
      />
      <CsvDoor kind="bandPair" />
    </div>
  );
}
