import type { CellReading } from '#contract/csv/cells.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import { toSi } from '#core/units/units.ts';
import type { HeaderUnit } from './headerWords.ts';

/** A figure in SI; an empty cell is null. A cell may name its own mass or length unit, which then counts. */
export function readFigure(cell: string, unit: HeaderUnit | null): CellReading {
  const text = cell.trim();
  if (text === '') return { value: null };
  if (plainNumber.test(text)) return { value: inSi(Number(text.replace(',', '.')), unit) };
  if (unit === null || unit === 's' || unit === 'min' || unit === 'mps')
    return { wrong: `"${text}" is not a number; write ${howToWrite[unit ?? 'plain']}.` };
  const read = parseQuantity(text, unit);
  return read.ok ? { value: read.valueSi } : { wrong: read.message };
}

/** Figures with `;` or blanks between them. */
export function readFigures(cell: string): CellReading {
  const figures = cell
    .split(/[;\s]+/)
    .filter((text) => text !== '')
    .map((text) => readFigure(text, null));
  const wrong = figures.find((figure) => 'wrong' in figure);
  return wrong ?? { value: figures.map((figure) => ('value' in figure ? figure.value : null)) };
}

const howToWrite = {
  plain: 'the number alone, such as 5 or 8.5',
  s: 'the seconds alone, such as 180',
  min: 'the minutes alone, such as 3.5',
  mps: 'metres a second alone, such as 0.52',
};

/** With a point or a comma; `1,000` is left to `parseQuantity`, which says that it has two meanings. */
const plainNumber = /^[+-]?(?![1-9]\d{0,2},\d{3}$)(\d+[.,]?\d*|[.,]\d+)(e[+-]?\d+)?$/i;

function inSi(value: number, unit: HeaderUnit | null): number {
  if (unit === null || unit === 's' || unit === 'mps') return value;
  return unit === 'min' ? value * 60 : toSi(value, unit);
}
