import type { Lift } from '#contract/records/lift.ts';
import type { Athlete } from './Athlete.ts';
import { type Draft, draftSet, hasDevice, hasTablet, type Outcome, type Today } from './draftSet.ts';
import type { TaskSetup } from './trueTask.ts';

/**
 * What lifters and devices write down of a set: speeds, reps left, rest, where a miss stopped. People are invented, lines
 * published:
 *
 *   bench: % of maximum = 8.4326 v^2 - 73.501 v + 112.33
 *          (Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347; from memory)
 *   squat: % of maximum = -5.961 v^2 - 50.71 v + 117.0
 *          (Sanchez-Medina et al. 2017, Sports Med Int Open 1:E80; from memory)
 *   deadlift: straight, 1.2 m/s over the whole range of bars (assumption)
 *
 * each moved to the lifter's own speed at the maximum. Reps left are said about one too few (Halperin et al. 2022, Sports
 * Med 52:377: 0.95, 95 % 0.17 to 1.73).
 */
export interface Asked {
  barKg: number;
  reps: number;
  restS: number;
  /** The set is one of those after which a lifter says how many were left. */
  isHard: boolean;
}

const DEADLIFT_SLOPE_MPS = 1.2;
/** From a dead stop the bar takes longer to get going. */
const STOPPED_MPS = 0.02;
const LEAST_SPEED_MPS = 0.04;
const SPEED_SD_MPS = 0.02;
const UNSAID_REPS = 0.95;
const UNSAID_SD_REPS = 0.6;
const UNSAID_SD_PER_REP = 0.15;
const MOST_SAID_REPS = 8;

export function writtenDown(now: Today, task: TaskSetup, asked: Asked, outcome: Outcome): Draft {
  const { athlete, day } = now;
  const { chance } = athlete;
  const { barKg, reps, restS, isHard } = asked;
  const { made } = outcome;
  const isMiss = made < reps;
  const says = athlete.rates && isHard && !isMiss && chance.happens(0.7);
  const isMeasured = hasDevice(athlete, day) && made > 0 && chance.happens(0.9);
  return draftSet(now, task, barKg, {
    reps,
    made,
    stoppedAtS: isMiss && chance.happens(0.6) ? stoppedAtS(athlete, task) : null,
    meanSpeedsMps: isMeasured ? speeds(now, task, outcome) : [],
    repsInReserve: says ? saidReserve(athlete, outcome) : null,
    restS: hasTablet(day) && chance.happens(0.8) ? restS : null,
  });
}

function speeds(now: Today, { setup }: TaskSetup, { made, possible, barShare }: Outcome): number[] {
  const { athlete, lift } = now;
  const { chance, device } = athlete;
  const { speedAtMaximum, quickness } = athlete.lifts[lift];
  const fresh = speedAtMaximum + quickness * (lineSpeed(lift, barShare) - lineSpeed(lift, 1));
  const first = fresh - (setup.start.way === 'free' ? 0 : STOPPED_MPS);
  const each = Array.from({ length: made }, (_, i) => {
    const slowed = first - (first - speedAtMaximum) * (i / Math.max(1, possible)) ** 1.3;
    const read = slowed + now.speedOffset + SPEED_SD_MPS * chance.fatBell();
    return Math.round(100 * Math.max(LEAST_SPEED_MPS, read)) / 100;
  });
  return device === 'each' ? each : [Math.max(...each)];
}

/** Mean speed by the published line at a share of the maximum. */
function lineSpeed(lift: Lift, share: number): number {
  if (lift === 'deadlift') return DEADLIFT_SLOPE_MPS * (1 - share);
  const [a, b, c] = lift === 'bench' ? [8.4326, -73.501, 112.33] : [-5.961, -50.71, 117];
  return (-b - Math.sqrt(b * b - 4 * a * (c - 100 * share))) / (2 * a);
}

function saidReserve({ chance }: Athlete, { made, possible }: Outcome): number {
  const left = possible - made;
  const said = left - UNSAID_REPS - (UNSAID_SD_REPS + UNSAID_SD_PER_REP * left) * chance.bell();
  return Math.round(2 * Math.min(MOST_SAID_REPS, Math.max(0, said))) / 2;
}

/** Scattered about the hardest height: half of the misses lie outside it (van den Tillaar & Ettema 2009). */
function stoppedAtS({ chance, task }: Athlete, setup: TaskSetup): number {
  const s = task(setup).hardestS + 0.15 * chance.bell();
  return Math.round(100 * Math.min(0.95, Math.max(0, s))) / 100;
}
