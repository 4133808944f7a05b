import type { FormEvent } from 'react';
import type { Place } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import { startText } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { RangeField } from '#web/parts/RangeField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BandFields } from '#web/setup/BandFields.tsx';
import { barReach } from './barReach.ts';
import type { Seat } from './Seat.ts';
import type { OnBar } from './solvedSetup.ts';

/** What the coach sets by hand for one lifter: it stays, and the rest is worked out around it, until it is given back. */
export function HandSettings(props: {
  seat: Seat;
  kept: OnBar;
  onBar: OnBar;
  /** Another start that was turned to in the picture; null: that of the place. */
  triedStart: Start | null;
  onTry: (onBar: OnBar) => void;
  onKeep: (byCoach: Place['byCoach']) => void;
  onLetGo: () => void;
}) {
  const { kept, onBar, triedStart, onTry, onKeep } = props;
  const { group, place, rack, solving } = props.seat;
  const { busy } = solving;
  const records = useClub();
  const units = useUnits();
  const own = place.byCoach;
  const reach = barReach(kept.barKg);
  const barChanged = Math.abs(onBar.barKg - kept.barKg) > 1e-6;
  const bandsChanged = !same(onBar.bands, kept.bands);
  const chainsChanged = !same(onBar.chains, kept.chains);

  const keep = (event: FormEvent) => {
    event.preventDefault();
    onKeep(
      anyOf({
        barKg: barChanged ? onBar.barKg : (own?.barKg ?? null),
        bands: bandsChanged ? onBar.bands : (own?.bands ?? null),
        chains: chainsChanged ? onBar.chains : (own?.chains ?? null),
      }),
    );
  };
  const giveBack = (part: Partial<NonNullable<Place['byCoach']>>) => {
    if (own !== null) onKeep(anyOf({ ...own, ...part }));
  };
  const changed = barChanged || bandsChanged || chainsChanged || triedStart !== null;
  return (
    <form className="stack" onSubmit={keep}>
      <div>
        <h4>Set by hand</h4>
        <p className="small quiet">
          The picture follows. What you keep stays; the rest is worked out around it.
        </p>
        {triedStart !== null && (
          <p>
            Tried: {startText(group.lift, triedStart, units.length)}. The picture shows it; the table follows
            when you keep it.
          </p>
        )}
      </div>
      <RangeField
        label="Bar, discs, collars"
        valueSi={onBar.barKg}
        unit={units.mass}
        minSi={reach.minKg}
        maxSi={reach.maxKg}
        stepSi={reach.stepKg}
        onChange={(barKg) => onTry({ ...onBar, barKg })}
      />
      <BandFields
        club={records}
        rackId={rack.id}
        lift={group.lift}
        setup={onBar}
        onChange={(change) => onTry({ ...onBar, ...change })}
      />
      <div className="row">
        <button type="submit" className="strong" disabled={busy || !changed}>
          Keep it and work out the rest
        </button>
        {changed && (
          <button type="button" onClick={props.onLetGo}>
            Put it back
          </button>
        )}
        {own?.barKg != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ barKg: null })}>
            Let the program choose the bar
          </button>
        )}
        {own?.bands != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ bands: null })}>
            Let the program choose the bands
          </button>
        )}
        {own?.chains != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ chains: null })}>
            Let the program choose the chains
          </button>
        )}
      </div>
    </form>
  );
}

/** What the coach fixed, or nothing. */
function anyOf(fixed: NonNullable<Place['byCoach']>): Place['byCoach'] {
  return fixed.barKg === null && fixed.bands === null && fixed.chains === null ? null : fixed;
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
