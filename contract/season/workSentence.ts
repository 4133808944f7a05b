import type { MassUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { SessionWork } from './sessionWork.ts';

/** "2150 kg lifted, 24 kJ of work, 3 min under the bar." */
export function workSentence({ liftedKg, workJ, underBarS }: SessionWork, mass: MassUnit): string {
  const time = underBarS === null ? [] : [`${timeText(underBarS)} under the bar`];
  return `${[`${liftedText(liftedKg, mass)} lifted`, `${workText(workJ)} of work`, ...time].join(', ')}.`;
}

export function liftedText(liftedKg: number, mass: MassUnit): string {
  return formatQuantity(liftedKg, mass, 0);
}

export function workText(workJ: number): string {
  return `${(workJ / J_A_KJ).toFixed(0)} kJ`;
}

/** Seconds of a short session, minutes of a week. */
export function timeText(seconds: number): string {
  return seconds < 2 * S_A_MIN ? `${seconds.toFixed(0)} s` : `${(seconds / S_A_MIN).toFixed(0)} min`;
}

const J_A_KJ = 1000;
const S_A_MIN = 60;
