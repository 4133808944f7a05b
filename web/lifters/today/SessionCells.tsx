import { Link } from 'wouter';
import { liftWord } from '#contract/words/liftWords.ts';
import type { Session } from '#reckon/log/sessionsOf.ts';
import { topSets } from '#reckon/log/topSets.ts';
import { useClub } from '#web/api/useClub.ts';
import type { Column } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { sessionWords } from '#web/setup/alikeWords.ts';
import { setupWords } from '#web/setup/setWords.ts';
import { meanOfSpeeds, speedText } from '#web/setup/speedWords.ts';
import { overWeeksAddress } from '../partAddress.ts';

/** The columns in which what was done with a setup on a day is told, wherever such lines stand. */
export function useSessionColumns(): Record<'setup' | 'done' | 'speed', Column<Session>> {
  const club = useClub();
  const units = useUnits();
  return {
    setup: {
      key: 'setup',
      head: 'Setup',
      cell: ({ sets: [first] }) =>
        first && (
          <Link href={overWeeksAddress(first)}>
            {liftWord(first.lift)}, {setupWords(club, first, units)}
          </Link>
        ),
    },
    done: { key: 'done', head: 'Done', cell: ({ sets }) => sessionWords(sets, units.mass) },
    speed: {
      key: 'speed',
      head: 'Speed of the heaviest',
      numeric: true,
      wideOnly: true,
      cell: ({ sets }) => speedText(meanOfSpeeds(topSets(sets))),
    },
  };
}
