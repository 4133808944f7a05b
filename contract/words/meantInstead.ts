import { formatQuantity } from '#core/units/formatQuantity.ts';
import { type Quantity, type Unit, units } from '#core/units/units.ts';
import { capital } from './capital.ts';
import { unitWord } from './written.ts';

/** What is asked beside a field about a value that can hardly be right; the coach may keep it. */
export interface Question {
  sentence: string;
  /** What may have been meant, likeliest first; one tap takes it. */
  offers: readonly Offer[];
}

export interface Offer {
  /** "Pounds? 99.8 kg" */
  word: string;
  valueSi: number;
}

/** More than that is no help. */
const MOST_OFFERS = 2;

/**
 * What a number typed in `unit` may have been meant as, where it reads as something usual: in another unit of the same quantity,
 * or, of a mass or a force, with a nought too many or too few.
 */
export function meantInstead(valueSi: number, unit: Unit, isUsual: (valueSi: number) => boolean): Offer[] {
  const { quantity, si } = units[unit];
  const inOtherUnits = otherUnits[quantity]
    .filter((other) => other !== unit)
    .map((other) => ({ word: unitNames[other], valueSi: (valueSi / si) * units[other].si }));
  const slips = quantity === 'length' ? inOtherUnits : [...inOtherUnits, ...noughts(valueSi)];
  return slips
    .filter((slip) => isUsual(slip.valueSi))
    .slice(0, MOST_OFFERS)
    .map((slip) => offer(slip.word, slip.valueSi, unit));
}

/** One offer, in the unit of the field. */
export function offer(word: string, valueSi: number, unit: Unit): Offer {
  // Without the dust of the last bits, so that what was meant is kept as if it had been typed.
  return {
    word: `${capital(word)}? ${quantityText(valueSi, unit)}`,
    valueSi: Number(valueSi.toPrecision(12)),
  };
}

/** A quantity as a field shows it: what a scale shows is called kg or lb. */
export function quantityText(valueSi: number, unit: Unit): string {
  return formatQuantity(valueSi, unit).replace(unit, unitWord(unit));
}

/** In which a number may have been meant, likeliest first. */
const otherUnits: Record<Quantity, readonly Unit[]> = {
  mass: ['kg', 'lb'],
  length: ['m', 'cm', 'in', 'ft', 'mm'],
  force: ['kgf', 'lbf', 'N'],
};

const unitNames: Record<Unit, string> = {
  kg: 'kilograms',
  lb: 'pounds',
  m: 'metres',
  cm: 'centimetres',
  mm: 'millimetres',
  in: 'inches',
  ft: 'feet',
  N: 'newtons',
  kgf: 'kilograms',
  lbf: 'pounds',
};

function noughts(valueSi: number) {
  return [
    { word: 'a nought too many', valueSi: valueSi / 10 },
    { word: 'a nought too few', valueSi: valueSi * 10 },
  ];
}
