import { relative } from 'node:path';
import type { Mutant } from './mutantsOf.ts';
import type { Untold } from './untold/Untold.ts';
import { untoldOfMotion } from './untold/untoldOfMotion.ts';
import { untoldOfPrices } from './untold/untoldOfPrices.ts';
import { untoldOfRanking } from './untold/untoldOfRanking.ts';
import { untoldOfSharing } from './untold/untoldOfSharing.ts';
import { untoldOfStrength } from './untold/untoldOfStrength.ts';

/**
 * What was looked at and found to change no answer: only how long a search takes, what is kept for later, which of two that are alike comes
 * first, or nothing at all. A change that is tuned, or that no test happens to see, does not belong here.
 */
export const untold: readonly Untold[] = [
  ...untoldOfMotion,
  ...untoldOfPrices,
  ...untoldOfRanking,
  ...untoldOfSharing,
  ...untoldOfStrength,
];

/** Why no answer shows this change of a source; null where it could. */
export function whyUntold(root: string, mutant: Mutant, source: string): string | null {
  const file = relative(root, mutant.file);
  return untold.find((one) => one.file === file && isOf(one, mutant, source))?.why ?? null;
}

/** Whether a change is one of those that an entry speaks of. */
export function isOf({ within, changes }: Untold, { start, end, from, to }: Mutant, source: string): boolean {
  const at = source.indexOf(within);
  return at >= 0 && at <= start && end <= at + within.length && changes.includes(`${from} -> ${to}`);
}
