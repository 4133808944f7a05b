/** Whole years of age on a day. Who was born on 29 February is a year older on 1 March where the year has no such day. */
export function ageOn(bornOn: string, day: string): number {
  const years = Number(day.slice(0, YEAR)) - Number(bornOn.slice(0, YEAR));
  return day.slice(YEAR) < bornOn.slice(YEAR) ? years - 1 : years;
}

/** Of "2026-11-25" the year. */
const YEAR = 4;
