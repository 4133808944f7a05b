import type { Unit } from '#core/units/units.ts';
import { meantInstead, type Question, quantityText } from './meantInstead.ts';
import { timesText } from './timesText.ts';

/** What a mass is held against: what is known of this lifter, and how far from it nothing is asked. */
export interface UsualMass {
  /** "the heaviest squat on record" */
  called: string;
  massKg: number;
  mostTimes: number;
  /** As a share of `massKg`; 0: nothing is too little. */
  leastShare: number;
}

/** What is asked of a mass far from what is usual; null: nothing. `unit` is that of the field. */
export function massQuestion(massKg: number, unit: Unit, usual: UsualMass): Question | null {
  const isUsual = (kg: number) =>
    kg <= usual.mostTimes * usual.massKg && kg >= usual.leastShare * usual.massKg;
  if (isUsual(massKg)) return null;
  const said = `This is ${timesText(massKg / usual.massKg)} ${usual.called}, ${quantityText(usual.massKg, unit)}.`;
  return { sentence: said, offers: meantInstead(massKg, unit, isUsual) };
}
