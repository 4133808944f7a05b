import { percent } from '#contract/words/percent.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { StartOnRange } from './startOnRange.ts';

/** Where bars stop, as the log counts it: 0 at the bottom of the competition range, 1 at lockout. */
export interface MissStop {
  s: number;
  word: string;
}

/** Where bars stop, as shares of the way from the start to lockout. Common practice, no source. */
const usual = [
  { share: 0.05, word: 'at the bottom' },
  { share: 0.4, word: 'half way' },
  { share: 0.85, word: 'near lockout' },
] as const;

/** The log tells where a bar stopped to a hundredth. */
export const stopStep = 0.01;

/** Starts nearer to the bottom of the competition range than this are at it. */
const atBottomS = 0.02;

/** Where bars usually stop in a lift that begins there; unknown, at the bottom of the competition range. */
export function missStops(start: StartOnRange | null): MissStop[] {
  return usual.map(({ share, word }) => ({ s: toStep(onRange(share, start)), word }));
}

/** A share of the way from the start to lockout as one of the competition range. */
export function onRange(share: number, start: StartOnRange | null): number {
  const startS = start?.startS ?? 0;
  return startS + share * (1 - startS);
}

/** The lowest step at which the bar can stop: none lies below where it starts. */
export function lowestStop(start: StartOnRange | null): number {
  return toStep(Math.ceil((start?.startS ?? 0) / stopStep - 1e-9) * stopStep);
}

/** In words: "40 % of the way from the bottom to lockout.", "5 cm below the bottom of the competition range." */
export function stopWords(s: number, start: StartOnRange | null, unit: LengthUnit): string {
  const startS = start?.startS ?? 0;
  const begins =
    Math.abs(startS) < atBottomS
      ? ''
      : startS > 0
        ? ` This start begins at ${percent(startS)}.`
        : ` This start begins ${below(startS, start, unit)} it.`;
  if (s < 0) return `${below(s, start, unit)} the bottom of the competition range.${begins}`;
  const bottom = begins === '' ? 'the bottom' : 'the bottom of the competition range';
  return `${percent(s)} of the way from ${bottom} to lockout.${begins}`;
}

function below(s: number, start: StartOnRange | null, unit: LengthUnit): string {
  return start === null ? `${percent(-s)} below` : `${formatQuantity(-s * start.rangeM, unit)} below`;
}

function toStep(s: number): number {
  // Adding 0 makes a plain 0 of -0.
  return Math.round(s / stopStep) / Math.round(1 / stopStep) + 0;
}
