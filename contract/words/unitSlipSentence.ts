import type { UnitSlip } from '#core/strength/unitSlips.ts';

/** Why a set is kept out of the estimate that looks as if its bar had been written down wrongly; `count` sets do. */
export function unitSlipSentence(looksLike: UnitSlip['looksLike'], count: number): string {
  const these = count === 1 ? 'This set looks' : `These ${count} sets look`;
  const like = looksLike === 'pounds' ? 'like pounds written down as kilograms' : 'like a nought too many';
  const bar = count === 1 ? 'It is' : 'They are';
  return `${these} ${like}. ${bar} kept out of the estimate and nothing was changed: please look at the bar that was written down.`;
}
