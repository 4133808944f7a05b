import type { Lift } from '#contract/records/lift.ts';
import { dateText } from '#contract/words/dateText.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { NORMAL_95 } from '#core/numeric/normal.ts';
import { heldForceN } from '#core/rep/strengthCurve.ts';
import { fromSi } from '#core/units/units.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { strengthWords } from './trial/strengthWords.ts';
import { type TrialStrength, trialStrength } from './trial/trialStrength.ts';

interface Row {
  lift: Lift;
  strength: TrialStrength;
}

/** What the lifter can hold still at both ends of each lift, on what that rests and what was assumed. */
export function CapabilitySection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const club = useClub();
  const units = useUnits();
  const gravityMps2 = gravityOf(club);
  const rows = liftWords.flatMap(({ value: lift }): Row[] => {
    try {
      const start = { way: 'free', heightM: null } as const;
      return [{ lift, strength: trialStrength(club, { lifterId: own.lifter.id, lift, start }, today, []) }];
    } catch (error) {
      if (error instanceof CannotAssemble) return [];
      throw error;
    }
  });
  const held =
    (end: 'fromM' | 'toM') =>
    ({ strength }: Row) => {
      const { capability, strengthSdLn, known } = strength;
      const forceN = heldForceN(capability, capability.range[end]);
      const mass = (factor: number) =>
        fromSi(Math.max(0, (forceN * factor) / gravityMps2 - capability.movedBodyKg), units.mass).toFixed(0);
      const spread = Math.exp(NORMAL_95 * strengthSdLn);
      return (
        <Known
          value={mass(1)}
          unit={units.mass}
          known={known}
          interval={`${mass(1 / spread)} to ${mass(spread)}`}
          why={strengthWords(club, strength, units)}
        />
      );
    };
  const columns: Column<Row>[] = [
    { key: 'lift', head: 'Lift', cell: ({ lift }) => liftWord(lift) },
    { key: 'bottom', head: 'Held still at the bottom', numeric: true, cell: held('fromM') },
    { key: 'lockout', head: 'Held still at lockout', numeric: true, cell: held('toM') },
    {
      key: 'rests',
      head: 'Rests on',
      wideOnly: true,
      cell: ({ strength: { best } }) =>
        best
          ? `${written(best.setup.barKg, units.mass)} ${units.mass} on ${dateText(best.doneOn)}`
          : 'body mass alone',
    },
  ];
  return (
    <section id={id} className="stack ruled">
      <h2>What this lifter can do</h2>
      <DataTable
        label="What this lifter can do"
        columns={columns}
        rows={rows}
        keyOf={({ lift }) => lift}
        nameOf={({ lift }) => liftWord(lift)}
      />
      <p className="small quiet">
        The heaviest bar that could just be held still there; moving one takes more strength.
      </p>
      <KnownLegend />
    </section>
  );
}
