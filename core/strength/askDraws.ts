import { normalCdf } from '../numeric/normal.ts';
import type { Kg, LnKg, LnRatio } from '../numeric/quantity.ts';
import { type Belief, beliefOf } from './belief.ts';
import type { Draw } from './Draw.ts';
import { DAY_FORMS, SET_SD_LN } from './noise.ts';
import { DAY_SD, type EquipmentName, equipmentParameter, WEEK_SD } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import { type LiftModel, readerOf, straightLnOf } from './readGroup.ts';
import { shapeReader } from './readShape.ts';
import { atSurplus } from './readTable.ts';
import { tabulateResponse } from './response.ts';
import { mixtureAt, setModel } from './setModel.ts';

/** Where and how something is lifted. */
export interface Asked {
  rigging: Rigging;
  movedBodyKg: Kg;
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
  const { start } = asked.rigging;
  const response = tabulateResponse(
    asked.rigging,
    lift.shape,
    lift.tiring,
    LEAST_SHARE * Math.min(...totals),
    MOST_SHARE * Math.max(...totals),
  );
  return draws.map((draw) => {
    const straightLn = straightLnOf(draw, lift, shapeReader(draw, lift.shape));
    const wantedLn = strengthIn(asked, draw);
    const missing = (lnTotal: number) =>
      straightLn({ start, lnTotal, limit: mixtureAt(response, lnTotal) }) - wantedLn;
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

/** What each draw expects of a set, rested, on an average day. */
export interface SetExpected {
  /** Mean speed (m/s) of the first rep; the slowest that goes up where the rep does not. */
  firstMps: number;
  /** The mean over all reps of the set, and by how much it changes with each unit of ln strength. */
  setMps: number;
  perLnMps: number;
  /** ln strength to spare at the first rep; below nought: it lacks. */
  spareLn: LnRatio;
  /** By how much less is to spare at the last rep. */
  lostLn: LnRatio;
}

/** ln strength over which the change of a speed is taken. */
const STEP_LN = 0.04;

/** A set of so many reps of a bar (kg), asked of every draw. */
export function setExpected(
  lift: LiftModel,
  asked: Asked,
  { barKg, reps }: { barKg: Kg; reps: number },
  draws: readonly Draw[],
): SetExpected[] {
  const totalKg = barKg + asked.movedBodyKg;
  const { shape, tiring } = lift;
  const response = tabulateResponse(asked.rigging, shape, tiring, totalKg, totalKg);
  const model = setModel(response, asked.rigging.start, Math.log(totalKg), asked.movedBodyKg);
  return draws.map((draw) => {
    const { straightLn, table } = readerOf(draw, lift)(model);
    const spareLn = strengthIn(asked, draw) - straightLn;
    const setMps = (surplusLn: number) => table.meanMps(surplusLn, reps);
    const fromLn = Math.max(0, spareLn - STEP_LN / 2);
    return {
      firstMps: atSurplus(table.speedMps, spareLn),
      setMps: setMps(spareLn),
      perLnMps: (setMps(fromLn + STEP_LN) - setMps(fromLn)) / STEP_LN,
      spareLn,
      lostLn: spareLn - table.surplusAtRep(spareLn, reps),
    };
  });
}

/** Chance that what is spare on an average day is not lost to the day's form, the set's luck and what else is not known. */
export function chanceToSpare(spareLn: LnRatio, { lnDaySd }: Draw, otherSdLn: LnRatio = 0): number {
  const daySd = DAY_SD * Math.exp(lnDaySd);
  let chance = 0;
  for (const { share, mean, sd } of DAY_FORMS)
    chance += share * normalCdf((spareLn + mean * daySd) / Math.hypot(sd * daySd, SET_SD_LN, otherSdLn));
  return chance;
}

/** What each draw makes of the straight competition lift in an equipment; `value` turns ln total mass into what is wanted. */
export function askedBelief(
  draws: readonly Draw[],
  equipment: EquipmentName,
  value: (lnTotal: LnKg) => number,
): Belief {
  return beliefOf(draws.map((draw) => value(strengthIn({ equipment, platform: false }, draw))));
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
export function strengthIn({ equipment, platform }: Pick<Asked, 'equipment' | 'platform'>, draw: Draw): LnKg {
  const name = equipmentParameter[equipment];
  return draw.lnTotal + (name === null ? 0 : draw[name]) + (platform ? draw.platform : 0);
}
