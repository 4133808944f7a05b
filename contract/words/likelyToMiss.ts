import { firstAndMore } from './firstAndMore.ts';

/** What is said beside the offer to tell a plan by the log; empty where nobody is likely to miss. */
export function likelyToMiss(names: readonly string[]): string {
  if (names.length === 0) return '';
  const are = names.length === 1 ? 'is' : 'are';
  return `Going by the log, ${firstAndMore(names)} ${are} likely to miss.`;
}
