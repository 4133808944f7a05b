import { ageOn } from './ageOn.ts';

/** From this age on a lifter is of age here; rules elsewhere may differ and come first. */
export const adultAge = 18;

/** Under age on a day, by what is known. */
export function isMinor(bornOn: string | null, on: string): boolean {
  return bornOn !== null && ageOn(bornOn, on) < adultAge;
}
