const MS_PER_DAY = 86_400_000;

/** The local date `days` after `today` (before, where negative): the invented club always looks alive. */
export function dayFrom(today: string, days: number): string {
  return new Date(Date.parse(`${today}T00:00:00Z`) + days * MS_PER_DAY).toISOString().slice(0, 10);
}
