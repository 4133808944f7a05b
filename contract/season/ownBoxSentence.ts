import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { depthWords } from './depthWords.ts';
import type { OwnBox } from './seasonPlan.ts';

/** Which box a lifter has, and why this one. */
export function ownBoxSentence(box: OwnBox, unit: LengthUnit): string {
  const { aboveParallelM, wantedM, heightM } = box;
  const wanted = wantedWords(box, unit);
  const own = `This lifter's own box, ${depthWords(aboveParallelM, unit)}`;
  return formatQuantity(heightM, unit) === formatQuantity(wantedM, unit)
    ? `${own}: ${wanted}.`
    : `${own}: ${formatQuantity(heightM, unit)}, the nearest to ${wanted}.`;
}

/** That the nearest box is not near, and what mends it. */
export function boxFarOffSentence(box: OwnBox, unit: LengthUnit): string {
  const { aboveParallelM, wantedM, heightM } = box;
  const off = formatQuantity(Math.abs(heightM - wantedM), unit);
  return `This lifter's box ${depthWords(aboveParallelM, unit)} would be ${wantedWords(box, unit)}; the nearest that the club can build is ${formatQuantity(heightM, unit)}, ${off} ${heightM > wantedM ? 'higher' : 'lower'}. Add a box or mats on the gear screen, or set another start, by hand or in the method.`;
}

function wantedWords({ wantedM, known }: OwnBox, unit: LengthUnit): string {
  const by = { measured: '', estimated: ' (estimated)', assumed: ' (assumed)', notMeasured: '' }[known];
  return `${formatQuantity(wantedM, unit)}${by}`;
}
