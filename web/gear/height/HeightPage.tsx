import { Link, useLocation } from 'wouter';
import { fromSi } from '#core/units/units.ts';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import { pairPull } from '#web/gear/state/pairPull.ts';
import type { PairState } from '#web/gear/state/pairState.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { usePairsFound } from '#web/gear/state/usePairsFound.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { FindFields } from '#web/parts/FindFields.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BarHeightField } from './BarHeightField.tsx';
import { PullCell } from './PullCell.tsx';

/** What every pair in use gives in every hookup, at one bar height: the wall chart of the gym. */
export function HeightPage({ gear }: { gear: Gear }) {
  const [, go] = useLocation();
  const { heightM } = useChosen(gear);
  const { mass } = useUnits();
  const [rackId, setRackId] = useInAddress('rack', 'all');
  const pairs = gear.pairs.filter(({ pair }) => pair.retiredOn === null);
  const found = usePairsFound(pairs);
  const places = gear.places.filter(({ rack }) => rackId === 'all' || rack.id === rackId);
  if (pairs.length === 0 || gear.places.length === 0) return <NothingToShow />;
  const columns: Column<PairState>[] = [
    {
      key: 'pair',
      head: 'pair',
      cell: ({ pair }) => (
        <span className="pair-name">
          <strong>{pair.label}</strong> <span className="quiet wide-only">{pair.widthMm} mm</span>
        </span>
      ),
    },
    {
      key: 'nominal',
      head: 'by habit',
      numeric: true,
      wideOnly: true,
      cell: ({ pair }) => (
        <span className="quiet">
          {pair.nominalKg === null ? '' : fromSi(pair.nominalKg, mass).toFixed(1)}
        </span>
      ),
    },
    ...places.map((place) => ({
      key: place.hookup.id,
      head: (
        <>
          <span className="quiet">{place.rack.label}</span>
          <br />
          {place.hookup.label}
        </>
      ),
      numeric: true,
      cell: (state: PairState) => (
        <PullCell
          pull={pairPull(gear, state, place, heightM)}
          gravityMps2={gear.gravityMps2}
          safeStretch={gear.club.safeStretchRatio}
        />
      ),
    })),
  ];
  return (
    <section className="stack">
      <div className="row ends base">
        <h1>What each pair gives, in {mass} at the bar</h1>
      </div>
      <div className="choose-hookup">
        <Choice
          label="Racks"
          showLabel
          options={[
            { value: 'all', word: 'all racks' },
            ...gear.records.rack.map(({ id, label }) => ({ value: id, word: label })),
          ]}
          value={rackId}
          onChange={setRackId}
        />
        <BarHeightField gear={gear} />
      </div>
      <FindFields found={found} label="Label, width or note" />
      <div className="wall-chart">
        <DataTable
          label={`Pairs by hookups, ${mass}`}
          columns={columns}
          rows={found.rows}
          keyOf={({ pair }) => pair.id}
          nameOf={({ pair }) => pair.label}
          onOpen={({ pair }) => go(`/bands/${pair.id}`)}
        />
      </div>
      <ul className="cell-legend small quiet">
        <li>Both bands together; ± holds 19 times in 20.</li>
        <li>
          <span className="mark">scale</span> read in this hookup, with what geometry predicts below it
        </li>
        <li>
          <span className="known-mark">est.</span> stretched further than it was read, or only one band read
        </li>
        <li>
          <span className="dashed">dashed</span> from the width alone, not measured
        </li>
        <li>minus: the pair carries part of the bar</li>
        <li>
          <span className="stop">red</span> stretched beyond the club's limit of {gear.club.safeStretchRatio}{' '}
          times
        </li>
      </ul>
    </section>
  );
}

function NothingToShow() {
  return (
    <section className="stack">
      <h1>What each pair gives on each rack</h1>
      <EmptyState
        title="It needs a pair of bands and a rack"
        steps={[
          <>
            <Link href="/bands/new">Add a pair of bands</Link>: label, width, rest length, and a few readings
            from a scale.
          </>,
          <>
            <Link href="/racks">Add a rack</Link>, with the points that bands hang on and the ways you hang
            them.
          </>,
          'Then this page shows, for any bar height, what every pair gives in every hookup.',
        ]}
      />
    </section>
  );
}
