import type { Unit } from '#core/units/units.ts';
import { meantInstead, type Question, quantityText } from './meantInstead.ts';

/** From where to where a quantity lies as a rule (SI). */
export type Usual = readonly [leastSi: number, mostSi: number];

/** What is asked of a value outside what is usual; null: nothing. `unit` is that of the field. */
export function usualQuestion(
  valueSi: number,
  unit: Unit,
  label: string,
  [leastSi, mostSi]: Usual,
): Question | null {
  const isUsual = (si: number) => si >= leastSi && si <= mostSi;
  if (isUsual(valueSi)) return null;
  const text = (si: number) => quantityText(si, unit);
  return {
    sentence: `${label} is ${text(valueSi)}; usual is ${text(leastSi)} to ${text(mostSi)}.`,
    offers: meantInstead(valueSi, unit, isUsual),
  };
}
