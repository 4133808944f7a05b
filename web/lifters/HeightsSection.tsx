import { useState } from 'react';
import { dateText } from '#contract/words/dateText.ts';
import { liftWord, startText } from '#contract/words/liftWords.ts';
import { signedText } from '#contract/words/signedText.ts';
import { written } from '#contract/words/written.ts';
import { NORMAL_95 } from '#core/numeric/normal.ts';
import { fromSi, type Unit } from '#core/units/units.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { HeightsForm } from './HeightsForm.tsx';
import { type HeightRow, heightRows } from './heightRows.ts';
import type { LifterRecords } from './lifterRecords.ts';

/** Bar heights by lift and start, measured or estimated. */
export function HeightsSection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const units = useUnits();
  const [editing, setEditing] = useState<HeightRow | 'new' | null>(null);
  const rows = heightRows(own);
  const columns: Column<HeightRow>[] = [
    { key: 'lift', head: 'Lift', cell: (row) => liftWord(row.lift) },
    { key: 'start', head: 'Start', cell: (row) => startText(row.lift, row.start, units.length) },
    { key: 'bottom', head: 'Bottom', numeric: true, cell: (row) => height(row, 'bottom', units.length) },
    { key: 'lockout', head: 'Lockout', numeric: true, cell: (row) => height(row, 'lockout', units.length) },
    {
      key: 'range',
      head: 'Travel',
      numeric: true,
      wideOnly: true,
      cell: (row) => `${written(row.lockoutM - row.bottomM, units.length, 1)} ${units.length}`,
    },
    {
      key: 'forward',
      head: 'In front',
      numeric: true,
      wideOnly: true,
      cell: ({ measured }) => forward(measured?.bottomForwardM ?? null, units.length),
    },
    {
      key: 'on',
      head: 'Measured on',
      wideOnly: true,
      cell: (row) => (row.measured ? dateText(row.measured.measuredOn) : 'not yet'),
    },
  ];
  return (
    <section id={id} className="stack ruled">
      <div className="row ends">
        <h2>Bar heights above the floor</h2>
        <button type="button" onClick={() => setEditing('new')}>
          Add heights
        </button>
      </div>
      {editing && (
        <HeightsForm
          key={editing === 'new' ? 'new' : keyOf(editing)}
          lifterId={own.lifter.id}
          row={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      {rows.length === 0 ? (
        <p>
          No heights yet. Measure bottom and lockout with a tape, from the floor to the centre of the bar; or
          enter the stature, and they will be estimated.
        </p>
      ) : (
        <DataTable
          label="Bar heights"
          columns={columns}
          rows={rows}
          keyOf={keyOf}
          nameOf={(row) => liftWord(row.lift)}
          onOpen={setEditing}
        />
      )}
    </section>
  );
}

function keyOf(row: HeightRow): string {
  return row.measured?.id ?? `estimated ${row.lift}`;
}

/** Where the bar is at the bottom against its place at lockout, minus behind. */
function forward(bottomForwardM: number | null, unit: Unit) {
  if (bottomForwardM === null) {
    const why =
      'Nobody measured it, so the bar is assumed to go straight up. To measure: film from the side, or hold a plumb line at lockout and read how far in front or behind the bar is at the bottom.';
    return <Known value="straight up" unit="" known="assumed" why={why} />;
  }
  return (
    <Known value={signedText(fromSi(bottomForwardM, unit), { decimals: 1 })} unit={unit} known="measured" />
  );
}

function height(row: HeightRow, end: 'bottom' | 'lockout', unit: Unit) {
  const heightM = end === 'bottom' ? row.bottomM : row.lockoutM;
  const sdM = end === 'bottom' ? row.bottomSdM : row.lockoutSdM;
  if (row.measured !== null || sdM === 0) {
    return <Known value={written(heightM, unit, 1)} unit={unit} known="measured" />;
  }
  const whole = (m: number) => Math.round(fromSi(m, unit));
  return (
    <Known
      value={written(heightM, unit, 1)}
      unit={unit}
      known="estimated"
      interval={`${whole(heightM - NORMAL_95 * sdM)} to ${whole(heightM + NORMAL_95 * sdM)}`}
      why={`Estimated from stature by published body proportions. To measure: take the position with an empty bar, let a second person hold a tape from the floor to the centre of the bar at ${end}, then open this line and type it in.`}
    />
  );
}
