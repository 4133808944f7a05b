import { normalCdf } from '../numeric/normal.ts';
import { type Belief, beliefOf } from './belief.ts';
import type { Draw } from './Draw.ts';
import { BAD_DAY_BELOW, BAD_DAY_FACTOR, BAD_DAY_SHARE, SET_SD_LN } from './noise.ts';
import { DAY_SD, type EquipmentName, equipmentParameter, WEEK_SD } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import {
  atSurplus,
  type LiftModel,
  neededSurplus,
  readerOf,
  straightLnOf,
  surplusAtRep,
} from './readGroup.ts';
import { type Response, tabulateResponse } from './response.ts';
import { setModel } from './setModel.ts';

/** Where and how something is lifted. */
export interface Asked {
  rigging: Rigging;
  movedBodyKg: number;
  equipment: EquipmentName;
  platform: boolean;
}

/** Total masses looked at, as shares of the straight total: from the weakest setup to the last inches of a lockout. */
const LEAST_SHARE = 0.2;
const MOST_SHARE = 2.2;

/**
 * The heaviest bar (kg) that each draw makes in a setup on an average day; 0 where not even the bands alone go up.
 * Throws RangeError where no strength makes the rep.
 */
export function maxBarsOf(lift: LiftModel, asked: Asked, draws: readonly Draw[]): number[] {
  const totals = draws.map((draw) => Math.exp(strengthIn(asked, draw)));
  const response = respond(
    lift,
    asked.rigging,
    LEAST_SHARE * Math.min(...totals),
    MOST_SHARE * Math.max(...totals),
  );
  return draws.map((draw) => {
    const straightLn = straightLnOf(response, asked.rigging.start, draw, lift);
    const wantedLn = strengthIn(asked, draw);
    const missing = (lnTotal: number) => straightLn(lnTotal) - wantedLn;
    let low = wantedLn + Math.log(LEAST_SHARE);
    let high = wantedLn + Math.log(MOST_SHARE);
    if (missing(low) > 0) return 0;
    for (let i = 0; i < 14; i++) {
      const middle = (low + high) / 2;
      if (missing(middle) > 0) high = middle;
      else low = middle;
    }
    return Math.max(0, Math.exp((low + high) / 2) - asked.movedBodyKg);
  });
}

/** What each draw expects of one bar. */
export interface Expected {
  /** Chance that all reps are made, the day's form and the set's luck included. */
  chance: number;
  /** Mean speed of the first and of the last rep (m/s) on an average day; the slowest that goes up where it does not. */
  firstMps: number;
  lastMps: number;
  /** ln strength to spare on an average day; below nought: it lacks. */
  spareLn: number;
}

/** `carriedLn`: strength still missing from sets before, at the population's tiring. */
export function expectOf(
  lift: LiftModel,
  asked: Asked,
  work: { barKg: number; reps: number; carriedLn: number },
  draws: readonly Draw[],
): Expected[] {
  const totalKg = work.barKg + asked.movedBodyKg;
  const response = respond(lift, asked.rigging, totalKg, totalKg);
  const model = setModel(response, asked.rigging.start, Math.log(totalKg));
  return draws.map((draw) => {
    const reading = readerOf(draw, lift)(model);
    const carriedLn = work.carriedLn * Math.exp(draw.lnTiring);
    const surplus = strengthIn(asked, draw) - reading.straightLn;
    const spareLn = surplus - carriedLn - neededSurplus(reading.table.lossLn, work.reps);
    return {
      chance: chanceToSpare(spareLn, draw),
      firstMps: atSurplus(reading.table.speedMps, surplus),
      lastMps: atSurplus(
        reading.table.speedMps,
        surplusAtRep(reading.table.lossLn, surplus - carriedLn, work.reps),
      ),
      spareLn,
    };
  });
}

/** Chance that what is spare on an average day is not lost to the day's form, the set's luck and what else is not known. */
export function chanceToSpare(spareLn: number, { lnDaySd }: Draw, otherSdLn = 0): number {
  const daySd = DAY_SD * Math.exp(lnDaySd);
  const good = normalCdf(spareLn / Math.hypot(daySd, SET_SD_LN, otherSdLn));
  const badSd = Math.hypot(BAD_DAY_FACTOR * daySd, SET_SD_LN, otherSdLn);
  const bad = normalCdf((spareLn - BAD_DAY_BELOW * daySd) / badSd);
  return (1 - BAD_DAY_SHARE) * good + BAD_DAY_SHARE * bad;
}

/** What each draw makes of the straight competition lift in an equipment; `value` turns ln total mass into what is wanted. */
export function askedBelief(
  draws: readonly Draw[],
  equipment: EquipmentName,
  value: (lnTotal: number) => number,
): Belief {
  const name = equipmentParameter[equipment];
  return beliefOf(draws.map((draw) => value(draw.lnTotal + (name === null ? 0 : draw[name]))));
}

/** How ln strength has changed some weeks later: by the draw's own weekly gain, and by what is not known of the drift. */
export function driftOver(draw: Draw, weeks: number): { meanLn: number; sdLn: number } {
  const ahead = Math.max(0, weeks);
  return {
    meanLn: ahead * draw.weekGain,
    sdLn: WEEK_SD * Math.exp(draw.lnWeekSd) * Math.sqrt(ahead),
  };
}

/** ln of the total mass that a draw is good for in an equipment, in the gym or on the platform. */
export function strengthIn(
  { equipment, platform }: Pick<Asked, 'equipment' | 'platform'>,
  draw: Draw,
): number {
  const name = equipmentParameter[equipment];
  return draw.lnTotal + (name === null ? 0 : draw[name]) + (platform ? draw.platform : 0);
}

function respond({ shape, tiring }: LiftModel, rigging: Rigging, lowKg: number, highKg: number): Response {
  return tabulateResponse(rigging, shape, tiring, lowKg, highKg);
}
