import { beyondBounds } from '#contract/json/beyondBounds.ts';
import type { Field } from '#contract/records/fields.ts';
import { guardFormula, unguardFormula } from './formulaGuard.ts';

/** What a cell says, or the sentence that says why it cannot be read. */
export type CellReading = { value: unknown } | { wrong: string };

/** One value as the text of a cell; null is an empty cell. */
export function writeCell({ sort }: Field, value: unknown): string {
  if (value === null || value === undefined) return '';
  if (sort === 'text') return guardFormula(value as string);
  if (sort === 'truth') return value === true ? 'yes' : 'no';
  return JSON.stringify(value);
}

/** The value that a cell's text spells; undefined where an empty cell means the field's default. */
export function readCell({ sort, nullable }: Pick<Field, 'sort' | 'nullable'>, cell: string): CellReading {
  if (cell === '' || (sort !== 'text' && cell.trim() === '')) return { value: nullable ? null : undefined };
  if (sort === 'text') return { value: unguardFormula(cell) };
  return readers[sort](cell.trim());
}

const readers = {
  number(cell: string): CellReading {
    if (/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(cell)) return { value: Number(cell) };
    return { wrong: `"${cell}" is not a number; write it with a point and without the unit, such as 102.5.` };
  },
  truth(cell: string): CellReading {
    const word = cell.toLowerCase();
    if (['yes', 'true', '1'].includes(word)) return { value: true };
    if (['no', 'false', '0'].includes(word)) return { value: false };
    return { wrong: `"${cell}" is neither yes nor no.` };
  },
  nested(cell: string): CellReading {
    const beyond = beyondBounds(cell);
    if (beyond !== null) return { wrong: `The cell ${beyond}, more than is taken.` };
    try {
      return { value: JSON.parse(cell) };
    } catch {
      return { wrong: `"${cell}" is not JSON; a list looks like ["squat","bench"].` };
    }
  },
};
