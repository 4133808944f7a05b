import { type Quantity, toSi, type Unit, units } from './units.ts';

export type ParsedQuantity = { ok: true; valueSi: number } | { ok: false; message: string };

/**
 * What people type, in SI (kg, m or N): `225`, `225 lb`, `102.5kg`, `102,5 kg`, `14 in`, `1.04 m`, `5'10"`. A bare
 * number is in `defaultUnit`, which also says whether a mass, a length or a force is wanted. A scale that shows kg or
 * lb is read as kgf or lbf where a force is wanted. Whatever else is typed comes back as one sentence.
 */
export function parseQuantity(text: string, defaultUnit: Unit): ParsedQuantity {
  const wanted = units[defaultUnit].quantity;
  const typed = text.trim();
  const feetAndInches = wanted === 'length' ? FEET_AND_INCHES.exec(typed) : null;
  if (feetAndInches) {
    const [, sign = '', feet = '', inches = ''] = feetAndInches;
    const lengthM = toSi(numberOf(feet), 'ft') + toSi(numberOf(inches), 'in');
    return { ok: true, valueSi: sign === '' ? lengthM : -lengthM };
  }
  const [, sign = '', digits = '', word = ''] = NUMBER_AND_UNIT.exec(typed) ?? [];
  if (digits === '' || !Number.isFinite(numberOf(digits))) return refuse(typed, `is not a ${wanted}`, wanted);
  if (THOUSANDS_OR_DECIMALS.test(digits)) {
    return refuse(typed, 'can be read in two ways, because of the comma before three digits', wanted);
  }
  const unit = word === '' ? defaultUnit : unitOf(word, wanted);
  if (unit === undefined) return refuse(typed, `has the unit "${word}", which is not known here`, wanted);
  if (units[unit].quantity !== wanted) {
    return refuse(typed, `is a ${units[unit].quantity} where a ${wanted} is asked for`, wanted);
  }
  const value = numberOf(digits);
  return { ok: true, valueSi: toSi(sign === '' ? value : -value, unit) };
}

const NUMBER = String.raw`\d+(?:[.,]\d*)?|[.,]\d+`;
const NUMBER_AND_UNIT = new RegExp(String.raw`^([-−]?)\s*(${NUMBER})\s*(\D*)$`);
const FEET_AND_INCHES = new RegExp(
  String.raw`^([-−]?)\s*(\d+)\s*(?:['’′]|ft|feet|foot)\s*(${NUMBER})\s*(?:["”″]|''|in|inch|inches)?$`,
  'i',
);
/** `1,000` is a thousand to some and one to others; `0,125` is clear. */
const THOUSANDS_OR_DECIMALS = /^[1-9]\d{0,2},\d{3}$/;

const WORDS: Record<Unit, readonly string[]> = {
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  m: ['m', 'metre', 'metres', 'meter', 'meters'],
  cm: ['cm'],
  mm: ['mm'],
  in: ['in', 'inch', 'inches', '"', '”', '″', "''"],
  ft: ['ft', 'foot', 'feet', "'", '’', '′'],
  N: ['n', 'newton', 'newtons'],
  kgf: ['kgf'],
  lbf: ['lbf'],
};

const FORCE_OF_MASS: Partial<Record<Unit, Unit>> = { kg: 'kgf', lb: 'lbf' };

const EXAMPLES: Record<Quantity, string> = {
  mass: '102.5 kg or 225 lb',
  length: '1.04 m, 104 cm, 14 in or 5\'10"',
  force: '350 N, 35.7 kgf or 78.7 lbf',
};

function numberOf(digits: string): number {
  return Number(digits.replace(',', '.'));
}

function unitOf(word: string, wanted: Quantity): Unit | undefined {
  const plain = word.trim().toLowerCase().replace(/\.$/, '');
  const unit = (Object.keys(WORDS) as Unit[]).find((name) => WORDS[name].includes(plain));
  return unit !== undefined && wanted === 'force' ? (FORCE_OF_MASS[unit] ?? unit) : unit;
}

function refuse(typed: string, why: string, wanted: Quantity): ParsedQuantity {
  const what = typed === '' ? 'Nothing was typed' : `"${typed}" ${why}`;
  return { ok: false, message: `${what}; write for example ${EXAMPLES[wanted]}.` };
}
