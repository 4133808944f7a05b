import { formatQuantity } from '#core/units/formatQuantity.ts';
import { fromSi, type Unit } from '#core/units/units.ts';

/** The number alone, without its unit; with fixed decimals where numbers stand in a column. */
export function written(valueSi: number, unit: Unit, decimals?: number): string {
  return formatQuantity(valueSi, unit, decimals).split(' ')[0] ?? '';
}

/** The unit as written on screen: a scale that reads force shows kg or lb. */
export function unitWord(unit: Unit): string {
  return unit === 'kgf' ? 'kg' : unit === 'lbf' ? 'lb' : unit;
}

/** The number alone, to a tenth, without an idle zero: for what was worked out or dragged, not typed. */
export function oneDecimal(valueSi: number, unit: Unit): string {
  return String(Number(fromSi(valueSi, unit).toFixed(1)));
}
