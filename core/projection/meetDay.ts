import { chanceToSpare, driftOver, strengthIn } from '../strength/askDraws.ts';
import type { Draw } from '../strength/Draw.ts';
import type { EquipmentName } from '../strength/parameters.ts';
import { lnBelow } from './lnBelow.ts';

/** The competition lift on a day ahead. */
export interface MeetAsked {
  equipment: EquipmentName;
  /** Share of the body that rises with the bar (kg). */
  movedBodyKg: number;
  /** From the day that the draws are of to the meet. */
  weeks: number;
  /** What the plan's last weeks are taken to add to ln strength, beyond what the lifter's past meets show: an assumption. */
  taperLn: number;
}

/** What may go up once on the day. */
export interface MeetDay {
  /** Chance that a single with this bar is made. */
  chanceAt: (barKg: number) => number;
  /** The bar (kg) below which the day's maximum lies with a probability. */
  barAt: (probability: number) => number;
}

/** Beyond so much of ln total mass about the draws the chance is nought or one. */
const FAR_LN = 1;

/**
 * Meet day of the straight competition lift. For each draw ln of the total mass that goes up once is
 *
 *   lnTotal + equipment + platform + taper + weeks * weekGain + drift + form + luck
 *
 * with drift normal, WEEK_SD exp(lnWeekSd) sqrt(weeks); form the day's own, at times a day that went wrong; luck that of
 * the set. Over all draws it is their mixture.
 */
export function meetDay(
  draws: readonly Draw[],
  { equipment, movedBodyKg, weeks, taperLn }: MeetAsked,
): MeetDay {
  const each = draws.map((draw) => {
    const { meanLn, sdLn } = driftOver(draw, weeks);
    const centreLn = strengthIn({ equipment, platform: true }, draw) + taperLn + meanLn;
    return { draw, centreLn, driftSdLn: sdLn };
  });
  const chanceOfLn = (lnTotal: number) =>
    each.reduce(
      (sum, { draw, centreLn, driftSdLn }) => sum + chanceToSpare(centreLn - lnTotal, draw, driftSdLn),
      0,
    ) / each.length;
  const centres = each.map(({ centreLn }) => centreLn);
  const [from, to] = [Math.min(...centres) - FAR_LN, Math.max(...centres) + FAR_LN];
  return {
    chanceAt: (barKg) => chanceOfLn(Math.log(barKg + movedBodyKg)),
    barAt(probability) {
      return Math.max(0, Math.exp(lnBelow(probability, chanceOfLn, { from, to })) - movedBodyKg);
    },
  };
}
