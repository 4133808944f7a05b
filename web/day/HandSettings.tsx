import { type FormEvent, useState } from 'react';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { BandOnBar, Setup } from '#contract/records/lift.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { useClub } from '#web/api/useClub.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { BandPicks } from './BandPicks.tsx';
import { ChainPicks } from './ChainPicks.tsx';
import { solvedSetup } from './solvedSetup.ts';

/** What the coach sets by hand for one lifter: it stays, and the rest is worked out around it, until it is given back. */
export function HandSettings(props: {
  group: Group;
  place: Place;
  rack: RecordOf<'rack'>;
  prescription: Prescription | null;
  busy: boolean;
  onFix: (byCoach: Place['byCoach']) => void;
}) {
  const { group, place, rack, busy, onFix } = props;
  const records = useClub();
  const units = useUnits();
  const solved = solvedSetup(props.prescription, group.id, place.lifterId);
  const own = place.byCoach;
  const [barKg, setBarKg] = useState<number | null>(own?.barKg ?? solved?.barKg ?? null);
  const [bands, setBands] = useState<BandOnBar[]>(own?.bands ?? solved?.bands ?? []);
  const [chains, setChains] = useState<Setup['chains']>(own?.chains ?? solved?.chains ?? []);
  const barChanged = barKg !== null && (own?.barKg ?? solved?.barKg) !== barKg;
  const bandsChanged = !same(bands, own?.bands ?? solved?.bands ?? []);
  const chainsChanged = !same(chains, own?.chains ?? solved?.chains ?? []);

  const keep = (event: FormEvent) => {
    event.preventDefault();
    onFix({
      barKg: barChanged ? barKg : (own?.barKg ?? null),
      bands: bandsChanged ? bands : (own?.bands ?? null),
      chains: chainsChanged ? chains : (own?.chains ?? null),
    });
  };
  const giveBack = (part: Partial<NonNullable<Place['byCoach']>>) => {
    if (own === null) return;
    const rest = { ...own, ...part };
    onFix(rest.barKg === null && rest.bands === null && rest.chains === null ? null : rest);
  };
  return (
    <form className="stack" onSubmit={keep}>
      <h4>Set by hand</h4>
      <p className="small quiet">What you set stays; everything else is worked out around it.</p>
      <NumberField
        label="Bar with discs and collars"
        valueSi={barKg}
        unit={units.mass}
        minSi={5}
        maxSi={1000}
        onChange={setBarKg}
      />
      <BandPicks
        pairs={records.bandPair.filter((pair) => pair.retiredOn === null)}
        hookups={records.hookup.filter((h) => h.rackId === rack.id && h.lifts.includes(group.lift))}
        bands={bands}
        onChange={setBands}
      />
      {rack.takesChains && records.chainPair.length > 0 && (
        <ChainPicks kinds={records.chainPair} chains={chains} onChange={setChains} />
      )}
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
            Give the bar back
          </button>
        )}
        {own?.bands != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ bands: null })}>
            Give the bands back
          </button>
        )}
        {own?.chains != null && (
          <button type="button" disabled={busy} onClick={() => giveBack({ chains: null })}>
            Give the chains back
          </button>
        )}
      </div>
    </form>
  );
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
