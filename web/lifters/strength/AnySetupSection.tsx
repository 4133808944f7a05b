import { useMemo, useState } from 'react';
import { setupKey } from '#contract/log/setupKey.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Belief, StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { fromSi } from '#core/units/units.ts';
import { competitionSetup } from '#reckon/strength/riggingOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { setupNames } from '../setupNames.ts';
import { type AskedLifter, maxBarOf } from './askDraws.ts';
import { firstSetups } from './firstSetups.ts';
import { riggingAsked } from './riggingAsked.ts';
import { SetupForm } from './SetupForm.tsx';
import { setupToKeep } from './setupToKeep.ts';
import { type KeptSetup, useKeptSetups } from './useKeptSetups.ts';

interface Row {
  kept: KeptSetup;
  /** The setup in words. */
  name: string;
  /** Or the sentence that says why there is none. */
  maxKg: Belief | string;
}

/** The heaviest bar for any setup, a line each; the coach adds lines, and this browser keeps them. */
export function AnySetupSection(props: {
  estimate: StrengthEstimate;
  lifter: AskedLifter;
  sets: readonly LoggedSet[];
}) {
  const { estimate, lifter, sets } = props;
  const { lifterId, lift, on } = estimate;
  const club = useClub();
  const units = useUnits();
  const [kept, keep] = useKeptSetups(lifterId);
  const [adding, setAdding] = useState(false);
  const [sayAgain, setSayAgain] = useState(false);
  const setups = useMemo(
    () => (kept ?? firstSetups(sets)).filter((setup) => setup.lift === lift),
    [kept, sets, lift],
  );
  const names = setupNames(club, setups, units);
  const answers = useMemo(
    () =>
      setups.map((setup): Row['maxKg'] => {
        // The number above the page's picture, and not the draws' rounding of it.
        if (isCounted(setup)) return estimate.maxKg;
        const rigging = riggingAsked(club, { lifterId, lift, setup: setup.setup, on });
        if (typeof rigging === 'string') return rigging;
        return (
          maxBarOf(lifter, rigging, setup.equipment) ??
          'The bands and chains alone are more than this lifter can lock out.'
        );
      }),
    [setups, club, lifter, lifterId, lift, on, estimate.maxKg],
  );
  const rows = setups.map(
    (setup, i): Row => ({ kept: setup, name: fullName(setup, names[i]!), maxKg: answers[i]! }),
  );
  const all = kept ?? firstSetups(sets);
  const add = (draft: Omit<KeptSetup, 'id' | 'lift'>) => {
    const setup = setupToKeep({ ...draft, lift });
    const known = all.some(({ id }) => id === setup.id);
    setSayAgain(known);
    if (!known) keep([...all, setup]);
    setAdding(false);
  };
  const columns: Column<Row>[] = [
    { key: 'setup', head: 'Setup', cell: ({ name }) => name },
    { key: 'max', head: 'Heaviest bar', numeric: true, cell: ({ maxKg }) => <MaxCell maxKg={maxKg} /> },
    {
      key: 'off',
      head: <span className="only-read">Take the line off</span>,
      cell: (row) => (
        <button
          type="button"
          className="plain screen-only"
          onClick={() => keep(all.filter(({ id }) => id !== row.kept.id))}
        >
          Take off<span className="only-read"> {row.name}</span>
        </button>
      ),
    },
  ];
  return (
    <div className="stack strength-setups">
      <div>
        <button type="button" className="screen-only" onClick={() => setAdding(true)}>
          Add a setup
        </button>
      </div>
      {adding && <SetupForm key={lift} lift={lift} onSave={add} onLeave={() => setAdding(false)} />}
      {sayAgain && <p className="small quiet">That setup is on the list already.</p>}
      {rows.length === 0 ? (
        <p>
          No setup is on the list yet. Add one: a box, pins, boards, bands or chains, and its heaviest bar is
          worked out.
        </p>
      ) : (
        <DataTable
          label="Maximum for any setup"
          columns={columns}
          rows={rows}
          keyOf={({ kept: { id } }) => id}
          nameOf={({ name }) => name}
        />
      )}
      <p className="small quiet">
        The range holds the heaviest bar of an average rested day 80 % of the time. It is an expectation, not
        an order: no maximum without warm-up, spotters and the coach's word.
      </p>
    </div>
  );
}

/** Whether strength is counted in this very setup. */
function isCounted({ lift, equipment, setup }: KeptSetup): boolean {
  const counted = { lift, equipment: 'raw' as const, setup: competitionSetup(lift) };
  return setupKey({ lift, equipment, setup }) === setupKey(counted);
}

/** In a table of one lift, "free" alone says too little: "free squat, straight weight". */
function fullName({ lift, setup: { start, bands, chains } }: KeptSetup, name: string): string {
  if (start.way !== 'free') return name;
  const whole = lift === 'squat' ? name.replace(/^free/, 'free squat') : name;
  return bands.length + chains.length === 0 ? `${whole}, straight weight` : whole;
}

function MaxCell({ maxKg }: { maxKg: Belief | string }) {
  const { mass } = useUnits();
  if (typeof maxKg === 'string') return <span className="small strength-why-not">{maxKg}</span>;
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  return (
    <Known
      value={whole(maxKg.median)}
      unit={mass}
      known="estimated"
      interval={`${whole(maxKg.low80)} to ${whole(maxKg.high80)}`}
    />
  );
}
