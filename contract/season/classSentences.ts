import { dateText } from '#contract/words/dateText.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import type { ClassAhead } from './classAhead.ts';

/** The words of a class, which rule books name in kg: "83 kg". Null: the heaviest. */
export function className(upToKg: number | null): string {
  return upToKg === null ? 'no upper limit' : `${upToKg} kg`;
}

/** A class at a meet ahead, where the scales stand to it, and where they stand above it what that asks for. */
export function classSentences(ahead: ClassAhead, mass: MassUnit): { says: string; caution: string | null } {
  const { title, date, upToKg, weighed } = ahead;
  const said =
    upToKg === null ? 'the heaviest class, without an upper limit' : `the class up to ${upToKg} kg`;
  const aboveKg = weighed === null || upToKg === null ? 0 : weighed.massKg - upToKg;
  const stands = weighed === null ? 'No body mass is on record.' : standsSentence(weighed, upToKg, mass);
  return {
    says: `${title} on ${dateText(date)}: ${said}. ${stands}`,
    caution: aboveKg >= leastToldKg ? cautionOf(ahead) : null,
  };
}

function standsSentence(
  { takenOn, massKg }: NonNullable<ClassAhead['weighed']>,
  upToKg: number | null,
  mass: MassUnit,
): string {
  const weighed = `Weighed ${figure(massKg, mass)} on ${dateText(takenOn)}`;
  if (upToKg === null) return `${weighed}.`;
  const aboveKg = massKg - upToKg;
  if (Math.abs(aboveKg) < leastToldKg) return `${weighed}, just at the limit.`;
  return aboveKg > 0
    ? `${weighed}, ${figure(aboveKg, mass)} above it.`
    : `${weighed}, ${figure(-aboveKg, mass)} below it.`;
}

function cautionOf({ notOfAge }: ClassAhead): string {
  if (notOfAge === 'minor')
    return 'Under 18: no cutting of weight at all for a class. Enter the class that the scales give, and leave what and how much to eat to parents and a physician.';
  const ifMinor =
    notOfAge === 'ageNotKnown' ? ' The day of birth is not on record: under 18 no weight is cut at all.' : '';
  return `The program plans no cut of weight. Losing it fast costs strength and can be dangerous: whether and how is for the lifter with a physician or a qualified dietitian, by the rules of the federation; entering a heavier class is always open.${ifMinor}`;
}

function figure(kg: number, mass: MassUnit): string {
  return `${Number(fromSi(kg, mass).toFixed(2))} ${mass}`;
}

/** Half of what rule books weigh to: a class ends at 83.0 kg and the next begins at 83.01. Less is what arithmetic leaves over. */
const leastToldKg = 0.005;
