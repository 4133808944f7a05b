import { randomInt } from 'node:crypto';

/**
 * A new id: the time in milliseconds and then chance, 19 small letters and digits. Ids of one process sort in the order in which
 * they were made, even when the clock is set back; two machines meet on one id with a chance below 1e-15.
 */
export function newId(): string {
  lastMs = Math.max(Date.now(), lastMs + 1);
  return lastMs.toString(36).padStart(timeDigits, '0') + chance() + chance();
}

/** Enough for the year 5188. */
const timeDigits = 9;
const fiveDigits = 36 ** 5;
let lastMs = 0;

function chance(): string {
  return randomInt(fiveDigits).toString(36).padStart(5, '0');
}
