import type { FormEvent } from 'react';
import type { Place } from '#contract/records/day.ts';
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
  onTry: (onBar: OnBar) => void;
  onFix: (byCoach: Place['byCoach']) => void;
}) {
  const { kept, onBar, onTry, onFix } = props;
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
    onFix({
      barKg: barChanged ? onBar.barKg : (own?.barKg ?? null),
      bands: bandsChanged ? onBar.bands : (own?.bands ?? null),
      chains: chainsChanged ? onBar.chains : (own?.chains ?? null),
    });
  };
  const giveBack = (part: Partial<NonNullable<Place['byCoach']>>) => {
    if (own === null) return;
    const rest = { ...own, ...part };
    onFix(rest.barKg === null && rest.bands === null && rest.chains === null ? null : rest);
  };
  return (
    <form className="stack" onSubmit={keep}>
      <div>
        <h4>Set by hand</h4>
        <p className="small quiet">
          The picture follows. What you keep stays; the rest is worked out around it.
        </p>
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
        <button
          type="submit"
          className="strong"
          disabled={busy || !(barChanged || bandsChanged || chainsChanged)}
        >
          Keep it and work out the rest
        </button>
        {own?.barKg != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ barKg: null })}>
            Give the bar back to the solver
          </button>
        )}
        {own?.bands != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ bands: null })}>
            Give the bands back to the solver
          </button>
        )}
        {own?.chains != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ chains: null })}>
            Give the chains back to the solver
          </button>
        )}
      </div>
    </form>
  );
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
