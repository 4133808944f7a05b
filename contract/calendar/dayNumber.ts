const MS_A_DAY = 86_400_000;

/** Days since 1970-01-01 of a local date. */
export function dayNumber(date: string): number {
  return Math.round(Date.parse(date) / MS_A_DAY);
}

export function dateOfDay(day: number): string {
  return new Date(day * MS_A_DAY).toISOString().slice(0, 10);
}
