/** Fore-aft pull of all bands at both ends of a lift (N, + forward), and whether the bar's path was measured. */
export interface ForeAft {
  bottomN: number;
  lockoutN: number;
  pathMeasured: boolean;
}

/** Less than this is neither felt nor known (about half a kilogram). */
const LEAST_N = 5;

/** Where the bands drag the bar besides down, as a coach says it; `force` writes newtons as the reader is used to. */
export function foreAftSentence(
  { bottomN, lockoutN, pathMeasured }: ForeAft,
  force: (newtons: number) => string,
): string {
  const pulls = [
    { forceN: bottomN, end: 'at the bottom' },
    { forceN: lockoutN, end: 'at lockout' },
  ]
    .filter(({ forceN }) => Math.abs(forceN) >= LEAST_N)
    .map(({ forceN, end }) => `${force(Math.abs(forceN))} ${forceN > 0 ? 'forward' : 'back'} ${end}`);
  const said =
    pulls.length === 0
      ? 'The bands pull neither forward nor back.'
      : `The bands pull ${pulls.join(' and ')}.`;
  return pathMeasured
    ? said
    : `${said} The bar is assumed to go straight up; to know better, measure how far forward or back it is at the bottom.`;
}
