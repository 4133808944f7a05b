import { useState } from 'react';
import type { Best } from '#contract/records/lifters.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { equipmentWord, liftWord, startText } from '#web/parts/liftWords.ts';
import { dateText } from '#web/parts/localToday.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { written } from '#web/parts/written.ts';
import { BestForm } from './BestForm.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { onBarText } from './onBarText.ts';

/** How many bests are shown before the rest is asked for. */
const shownAtFirst = 8;

/** Maxima that were made, each with everything that was on the bar. */
export function BestsSection({ own, today }: { own: LifterRecords; today: string }) {
  const club = useClub();
  const units = useUnits();
  const [editing, setEditing] = useState<Best | 'new' | null>(null);
  const [all, setAll] = useState(false);
  const columns: Column<Best>[] = [
    { key: 'on', head: 'Date', cell: (best) => dateText(best.doneOn) },
    {
      key: 'lift',
      head: 'Lift',
      cell: (best) => `${liftWord(best.lift)}, ${startText(best.lift, best.setup.start, units.length)}`,
    },
    {
      key: 'bar',
      head: `Bar, ${units.mass}`,
      numeric: true,
      cell: (best) => written(best.setup.barKg, units.mass, 1),
    },
    {
      key: 'with',
      head: 'Bands and chains',
      wideOnly: true,
      cell: (best) => onBarText(best.setup, club) || '–',
    },
    { key: 'in', head: 'In', wideOnly: true, cell: (best) => equipmentWord(best.equipment) },
    {
      key: 'where',
      head: 'Where',
      wideOnly: true,
      cell: (best) => (best.platform ? `${best.place}, meet` : best.place),
    },
  ];
  return (
    <section className="stack ruled">
      <div className="row ends">
        <h2>Bests</h2>
        <button type="button" onClick={() => setEditing('new')}>
          Write down a best
        </button>
      </div>
      {editing && (
        <BestForm
          key={editing === 'new' ? 'new' : editing.id}
          lifterId={own.lifter.id}
          best={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      {own.bests.length === 0 ? (
        <p>
          No best yet. One heavy single with everything that was on the bar is enough to work out what other
          setups ask.
        </p>
      ) : (
        <DataTable
          label="Bests"
          columns={columns}
          rows={all ? own.bests : own.bests.slice(0, shownAtFirst)}
          keyOf={(best) => best.id}
          nameOf={(best) => liftWord(best.lift)}
          onOpen={setEditing}
        />
      )}
      {own.bests.length > shownAtFirst && (
        <div>
          <button type="button" className="plain" onClick={() => setAll(!all)}>
            {all ? 'Show the newest only' : `Show all ${own.bests.length}`}
          </button>
        </div>
      )}
    </section>
  );
}
