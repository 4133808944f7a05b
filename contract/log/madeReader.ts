import type { CellReading } from '#contract/csv/cells.ts';
import { readFigure } from './readFigure.ts';

/** How many reps a cell says were made, of those asked for in each of its `sets`. Null: the cell is empty. */
export type ReadMade = (cell: string, reps: number | null | undefined, sets: number) => CellReading;

/**
 * Reads the column of reps made: figures, or yes and no. Yes means all reps asked for, no that the last one asked for was
 * missed. `x` is a tick in one club and a miss in the next: it counts as yes only where all other lines say no.
 */
export function madeReader(
  cells: readonly string[],
  header: string,
): { readMade: ReadMade; readAs: string | null } {
  const kinds = cells.map(kindOf);
  const isTick = kinds.every((kind) => kind === 'tick' || kind === 'missed');
  const readMade: ReadMade = (cell, reps, sets) => {
    const kind = kindOf(cell);
    if (kind === 'figure') {
      const read = readFigure(cell, null);
      return 'value' in read
        ? read
        : { wrong: `"${cell.trim()}" is neither the number of reps made nor yes or no.` };
    }
    if (kind === 'tick' && !isTick) return { wrong: unclearTick(cell.trim()) };
    if (kind !== 'missed') return { value: reps };
    if (sets > 1) return { wrong: whichOf(cell.trim(), sets) };
    return { value: typeof reps === 'number' ? reps - 1 : reps };
  };
  const missed = kinds.filter((kind) => kind === 'missed').length;
  const made = kinds.filter((kind) => kind === 'all' || kind === 'tick').length;
  return { readMade, readAs: made + missed === 0 ? null : sentence(header, made, missed) };
}

type Kind = 'all' | 'missed' | 'tick' | 'figure';

function kindOf(cell: string): Kind {
  const word = cell.trim().normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  if (word === 'x') return 'tick';
  if (allMade.has(word)) return 'all';
  return oneMissed.has(word) ? 'missed' : 'figure';
}

const allMade = new Set(
  'yes y true made done success successful ok ✓ ✔ ja j wahr geschafft oui vrai reussi si verdadero hecho'.split(
    ' ',
  ),
);
const oneMissed = new Set(
  'no n false missed miss failed fail ✗ ✘ nein falsch verfehlt non faux rate manque falso fallado'.split(' '),
);

function unclearTick(cell: string): string {
  return `"${cell}" is a tick in one table and a miss in another, and this column does not show which; write yes or no, or the reps made.`;
}

function whichOf(cell: string, sets: number): string {
  return `"${cell}" does not say which of the ${sets} sets of this line was missed; give that one a line of its own.`;
}

function sentence(header: string, made: number, missed: number): string {
  const all = made === 0 ? [] : [`on ${lines(made)} all reps asked for were made`];
  const last = missed === 0 ? [] : [`on ${lines(missed)} the last one asked for was missed`];
  const more = missed === 0 ? '' : ' Where more were missed, write the reps made instead.';
  return `${header} was read as yes or no: ${[...all, ...last].join(', ')}.${more}`;
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${count} lines`;
}
