/** Tells the time in ms, counted from any moment. Core has no clock of its own: whoever wants an end to a search gives one in. */
export type Clock = () => number;

/** For whoever can wait: a search by it takes the time that it needs. */
export const noClock: Clock = () => 0;

/** Tells which share of `limitMs` is gone since this call: 1 at the end of it. */
export function timeSpent(clock: Clock, limitMs: number): () => number {
  const startedMs = clock();
  return () => (clock() - startedMs) / limitMs;
}
