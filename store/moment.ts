/**
 * This moment by the clock, or just after another where the clock stands before that: a clock that was put back must not make what
 * was done later look earlier.
 */
export function momentAfter(last: string | null): string {
  const earliest = last === null ? Number.NEGATIVE_INFINITY : Date.parse(last) + 1;
  return new Date(Math.max(Date.now(), earliest)).toISOString();
}
