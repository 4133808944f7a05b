/** From this age on a lifter is of age here; rules elsewhere may differ and come first. */
const adultAge = 18;

/** Whole years from birth to a date; null where the birth date is not known. */
export function ageOn(bornOn: string | null, on: string): number | null {
  if (bornOn === null) return null;
  const years = Number(on.slice(0, 4)) - Number(bornOn.slice(0, 4));
  // Calendar dates of one form compare as text: month and day not yet reached takes a year off.
  return on.slice(5) < bornOn.slice(5) ? years - 1 : years;
}

/** Under age on that date, by what is known. */
export function isMinor(bornOn: string | null, on: string): boolean {
  const age = ageOn(bornOn, on);
  return age !== null && age < adultAge;
}
