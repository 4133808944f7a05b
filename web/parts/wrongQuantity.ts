import { meantInstead, type Offer } from '#contract/words/meantInstead.ts';
import { unitWord, written } from '#contract/words/written.ts';
import { parseQuantity } from '#core/units/parseQuantity.ts';
import type { Unit } from '#core/units/units.ts';

/** What a field takes; limits in SI. */
interface Allowed {
  label: string;
  unit: Unit;
  minSi?: number | undefined;
  maxSi?: number | undefined;
  required?: boolean | undefined;
}

/** What is wrong with a typed quantity, as one sentence in the unit of the field; null where nothing is. */
export function wrongQuantity(text: string, allowed: Allowed): string | null {
  const { label, unit, minSi, maxSi } = allowed;
  if (text.trim() === '') return allowed.required ? `${label} is needed.` : null;
  const parsed = parseQuantity(text, unit);
  if (!parsed.ok) return parsed.message;
  if (isAllowed(parsed.valueSi, allowed)) return null;
  const say = (si: number) => `${written(si, unit)} ${unitWord(unit)}`;
  const range =
    minSi !== undefined && maxSi !== undefined
      ? `${say(minSi)} to ${say(maxSi)}`
      : minSi !== undefined
        ? `${say(minSi)} or more`
        : `${say(maxSi ?? 0)} or less`;
  return `${label} is ${say(parsed.valueSi)}; allowed is ${range}.`;
}

/** What may have been meant by a quantity outside of what its field takes, likeliest first. */
export function allowedInstead(text: string, allowed: Allowed): Offer[] {
  const parsed = parseQuantity(text, allowed.unit);
  if (!parsed.ok || isAllowed(parsed.valueSi, allowed)) return [];
  return meantInstead(parsed.valueSi, allowed.unit, (valueSi) => isAllowed(valueSi, allowed));
}

function isAllowed(valueSi: number, { minSi = -Infinity, maxSi = Infinity }: Allowed): boolean {
  return valueSi >= minSi - 1e-9 && valueSi <= maxSi + 1e-9;
}
