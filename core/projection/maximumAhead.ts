import { normalCdf } from '../numeric/normal.ts';
import type { LnRatio } from '../numeric/quantity.ts';
import { driftOver, strengthIn } from '../strength/askDraws.ts';
import type { Draw } from '../strength/Draw.ts';
import { lnBelow } from './lnBelow.ts';
import type { MeetAsked } from './meetDay.ts';

/** Beyond so many standard deviations of the drift nothing is looked for. */
const FAR_SD = 8;

/**
 * The bar (kg) of the straight competition lift below which the maximum of an average rested gym day lies with a probability, some weeks after the day that the
 * draws are of. For each draw ln of the total mass is normal about `lnTotal + equipment + weeks * weekGain` with the drift's own
 * spread, as in `meetDay`, without the form of one day; over all draws it is their mixture. With `ratiosLn`, one for each draw, the same of what is so much
 * (ln) of the total mass of the maximum: what can be held at a height.
 */
export function maximumAhead(
  draws: readonly Draw[],
  { equipment, movedBodyKg, weeks }: Omit<MeetAsked, 'taperLn'>,
  ratiosLn: readonly LnRatio[] = [],
): (probability: number) => number {
  const each = draws.map((draw, at) => {
    const { meanLn, sdLn } = driftOver(draw, weeks);
    const totalLn = strengthIn({ equipment, platform: false }, draw) + (ratiosLn[at] ?? 0);
    return { centreLn: totalLn + meanLn, sdLn };
  });
  const chanceOfLn = (lnTotal: number) =>
    each.reduce((sum, { centreLn, sdLn }) => sum + atLeast(centreLn - lnTotal, sdLn), 0) / each.length;
  const bounds = {
    from: Math.min(...each.map(({ centreLn, sdLn }) => centreLn - FAR_SD * sdLn)),
    to: Math.max(...each.map(({ centreLn, sdLn }) => centreLn + FAR_SD * sdLn)),
  };
  return (probability) => Math.max(0, Math.exp(lnBelow(probability, chanceOfLn, bounds)) - movedBodyKg);
}

/** Today nothing has drifted. */
function atLeast(spareLn: number, sdLn: number): number {
  return sdLn === 0 ? Number(spareLn >= 0) : normalCdf(spareLn / sdLn);
}
