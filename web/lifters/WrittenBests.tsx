import { useState } from 'react';
import type { Best } from '#contract/records/lifters.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord, liftWord, startText } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { onBarText } from '#web/setup/onBarText.ts';

/** How many bests are shown before the rest is asked for. */
const shownAtFirst = 8;

/** Maxima that somebody wrote down, the newest first; Enter changes one. */
export function WrittenBests(props: { bests: readonly Best[]; onOpen: (best: Best) => void }) {
  const { bests } = props;
  const club = useClub();
  const units = useUnits();
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
    { key: 'note', head: 'Note', wideOnly: true, cell: (best) => best.note },
  ];
  return (
    <>
      <DataTable
        label="Bests"
        columns={columns}
        rows={all ? bests : bests.slice(0, shownAtFirst)}
        keyOf={(best) => best.id}
        nameOf={(best) => liftWord(best.lift)}
        onOpen={props.onOpen}
      />
      {bests.length > shownAtFirst && (
        <div>
          <button type="button" className="plain" onClick={() => setAll(!all)}>
            {all ? 'Show the newest only' : `Show all ${bests.length}`}
          </button>
        </div>
      )}
    </>
  );
}
