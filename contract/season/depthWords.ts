import type { Lift } from '#contract/records/lift.ts';
import type { StartAsked } from '#contract/records/method.ts';
import { startText } from '#contract/words/liftWords.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';

/** A box by depth, among the ways in which a squat may begin. */
export const ownBoxWord = { value: 'ownBox', word: "box at each lifter's own height" } as const;

/** "at parallel", "6 cm above parallel". */
export function depthWords(aboveParallelM: number, unit: LengthUnit = 'cm'): string {
  if (aboveParallelM === 0) return 'at parallel';
  const off = formatQuantity(Math.abs(aboveParallelM), unit);
  return `${off} ${aboveParallelM > 0 ? 'above' : 'below'} parallel`;
}

/** A start as a method asks for it: "box 36 cm", "own box at parallel". */
export function startAskedText(lift: Lift, start: StartAsked, unit: LengthUnit): string {
  return start.way === 'ownBox'
    ? `own box ${depthWords(start.aboveParallelM, unit)}`
    : startText(lift, start, unit);
}
