import { fromSi } from '#core/units/units.ts';
import { BarHeightField } from '#web/gear/height/BarHeightField.tsx';
import { useChosen } from '#web/gear/state/Chosen.tsx';
import { type HookupPlace, type NoPull, type PairPull, pairPull } from '#web/gear/state/pairPull.ts';
import type { PairState } from '#web/gear/state/pairState.ts';
import { weightText } from '#web/gear/state/pullText.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { DataTable } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { Gives } from './Gives.tsx';

/** What this pair gives in every hookup of the club at one bar height. */
export function BandGives({ gear, state }: { gear: Gear; state: PairState }) {
  const { heightM } = useChosen(gear);
  const units = useUnits();
  const { nominalKg } = state.pair;
  if (gear.places.length === 0) return null;
  const rows = gear.places.map((place) => ({
    place,
    pull: pairPull(gear, state, place, heightM),
  }));
  return (
    <section className="stack">
      <h2>What the pair gives at the bar</h2>
      <div className="narrow-field">
        <BarHeightField gear={gear} />
      </div>
      {nominalKg !== null && (
        <p className="quiet">
          By habit the gym says {fromSi(nominalKg, units.mass).toFixed(0)} {units.mass} for it, wherever it
          hangs.
        </p>
      )}
      <DataTable
        label="What the pair gives in each hookup"
        rows={rows}
        keyOf={({ place }) => place.hookup.id}
        nameOf={({ place }) => place.rack.label}
        columns={[
          { key: 'rack', head: 'rack', cell: ({ place }: Row) => place.rack.label },
          { key: 'hookup', head: 'hookup', cell: ({ place }) => place.hookup.label },
          {
            key: 'gives',
            head: 'gives, both bands',
            cell: ({ pull }) => <Gives pull={pull} gravityMps2={gear.gravityMps2} />,
          },
          {
            key: 'forward',
            head: `fore-aft ${units.mass}`,
            numeric: true,
            wideOnly: true,
            cell: ({ pull }) =>
              'not' in pull ? '' : weightText(pull.foreAftN, units.mass, gear.gravityMps2),
          },
          {
            key: 'point',
            head: `each point carries ${units.mass}`,
            numeric: true,
            cell: ({ place, pull }) => <PointLoad gear={gear} place={place} pull={pull} />,
          },
          {
            key: 'stretch',
            head: 'stretch',
            numeric: true,
            wideOnly: true,
            cell: ({ pull }) =>
              !('not' in pull) && (
                <span className={pull.stretch > gear.club.safeStretchRatio ? 'stop' : ''}>
                  {pull.stretch.toFixed(2)} times
                </span>
              ),
          },
        ]}
      />
    </section>
  );
}

/** What one anchor point carries, and its rating where that is passed or not known. */
function PointLoad({ gear, place, pull }: Row & { gear: Gear }) {
  const { mass } = useUnits();
  if ('not' in pull) return null;
  const { ratedLoadN } = place.anchor;
  const text = (forceN: number) => weightText(forceN, mass, gear.gravityMps2);
  if (ratedLoadN === null) {
    return (
      <>
        {text(pull.anchorN)} <span className="stop">not rated</span>
      </>
    );
  }
  if (pull.anchorN <= ratedLoadN) return text(pull.anchorN);
  return (
    <span className="stop">
      {text(pull.anchorN)}, rated {text(ratedLoadN)}
    </span>
  );
}

interface Row {
  place: HookupPlace;
  pull: PairPull | NoPull;
}
