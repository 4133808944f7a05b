import type { Lift } from '#core/lifter/populationShape.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import { chance } from '../simulateLifter.ts';
import { drawLifter } from './otherLifter.ts';
import type { ModelName } from './otherModels.ts';

/** What befalls a lifter or a log. */
export type Situation =
  | 'ordinary'
  | 'fives'
  | 'loss10'
  | 'loss20'
  | 'pause26'
  | 'pause52'
  | 'pause104'
  | 'pounds';
export const situations: readonly Situation[] = [
  'ordinary',
  'fives',
  'loss10',
  'loss20',
  'pause26',
  'pause52',
  'pause104',
  'pounds',
];

export interface SituationLog {
  lift: Lift;
  reference: Rigging;
  bodyMassKg: number;
  movedBodyKg: number;
  sets: SetEvidence[];
  onDay: number;
  /** The straight maximum bar on that day (kg). */
  truthKg: number;
}

const WEEKS = 16;
const DAYS_A_WEEK = 7;
const DAY_SD_LN = 0.02;
const WEEK_SD_LN = 0.005;
const WEEK_GAIN_LN = 0.001;
/** How well lifters know what they can do. */
const BELIEF_SD_LN = 0.025;
const KEPT_SD_REPS = 0.8;
/** Nobody means to leave less, and one week in four is lighter by so many reps. */
const KEPT_LEAST = 1;
const LIGHT_SHARE = 0.25;
const LIGHT_REPS = 3;
const LIGHTER_AFTER_MISS = 0.93;
const KG_PER_LB = 0.45359237;
const POUNDS_FROM_DAY = 8 * DAYS_A_WEEK;
const POUNDS_TO_DAY = 12 * DAYS_A_WEEK;
const LOST_LN: Partial<Record<Situation, number>> = { loss10: Math.log(0.9), loss20: Math.log(0.8) };
const PAUSE_WEEKS: Partial<Record<Situation, number>> = { pause26: 26, pause52: 52, pause104: 104 };
/**
 * What a pause costs, a straight line after four weeks up to a level: maximal force is kept for about three weeks
 * (McMaster et al. 2013, Sports Med 43:367) and falls with the length of the pause (Bosquet et al. 2013, Scand J Med Sci Sports
 * 23:e140); rate, level and spread are assumptions.
 */
const PAUSE_KEEPS_WEEKS = 4;
const PAUSE_LN_A_WEEK = 0.005;
const PAUSE_MOST_LN = 0.16;
const PAUSE_SD_LN = 0.4;

/** Sixteen weeks of two days each, and then what befalls: two sessions of five sets in two weeks of loss (the second one
 * steps up to a single that is about too heavy), or a pause. */
export function situationLog(situation: Situation, model: ModelName, lift: Lift, seed: number): SituationLog {
  const random = chance(seed);
  const lifter = drawLifter(model, lift, random);
  const { normal, uniform } = random;
  const log: SetEvidence[] = [];
  let lnMaximum = Math.log(lifter.maximumKg);
  const session = (day: number, kind: 'singles' | 'test' | 'fives', believedLn: number) => {
    const todayKg = Math.exp(lnMaximum + DAY_SD_LN * normal());
    const plannedKg = Math.exp(believedLn + BELIEF_SD_LN * normal());
    const silent = situation === 'fives';
    let beforeSets = 0;
    const lifts = (share: number, reps: number) =>
      lifter.lifts(log, {
        day,
        barKg: Math.max(5, 2.5 * Math.round((share * plannedKg) / 2.5)),
        reps,
        todayKg,
        beforeSets: beforeSets++,
        silent,
      });
    if (kind === 'test') return void [0.7, 0.82, 0.9, 0.96, 1.03].every((share) => lifts(share, 1));
    if (kind === 'singles') {
      for (const share of [0.6, 0.72, 0.82, 0.9]) if (!lifts(share, 1)) return void lifts(share - 0.12, 1);
      if (uniform() < 0.5) lifts(0.95, 1);
      return;
    }
    const light = uniform() < LIGHT_SHARE ? LIGHT_REPS : 0;
    const kept = Math.max(KEPT_LEAST, lifter.keepsReps + KEPT_SD_REPS * normal()) + light;
    const share = lifter.shareFor(5 + kept);
    lifts(0.6 * share, 5);
    lifts(0.8 * share, 5);
    // After a miss the bar is lighter.
    for (let i = 0, now = share; i < 3; i++) if (!lifts(now, 5)) now *= LIGHTER_AFTER_MISS;
  };
  for (let week = 0; week < WEEKS; week++) {
    lnMaximum += WEEK_GAIN_LN + WEEK_SD_LN * normal();
    const day = DAYS_A_WEEK * week;
    session(day, situation === 'fives' ? 'fives' : 'singles', lnMaximum);
    session(day + 3, 'fives', lnMaximum);
  }
  let onDay = DAYS_A_WEEK * WEEKS;
  const lostLn = LOST_LN[situation];
  if (lostLn !== undefined) {
    // The first of the two days is planned by what was there before.
    lnMaximum += lostLn / 2;
    session(onDay, 'fives', lnMaximum - lostLn / 2);
    lnMaximum += lostLn / 2;
    onDay += DAYS_A_WEEK;
    session(onDay, 'test', lnMaximum);
  }
  const weeks = PAUSE_WEEKS[situation];
  if (weeks !== undefined) {
    onDay += DAYS_A_WEEK * weeks;
    const lost = Math.min(PAUSE_MOST_LN, PAUSE_LN_A_WEEK * (weeks - PAUSE_KEEPS_WEEKS));
    lnMaximum -= lost * Math.exp(PAUSE_SD_LN * normal() - PAUSE_SD_LN ** 2 / 2);
  }
  if (situation === 'pounds')
    for (const set of log)
      if (set.day >= POUNDS_FROM_DAY && set.day < POUNDS_TO_DAY)
        set.barKg = 5 * Math.round(set.barKg / KG_PER_LB / 5);
  const { reference, bodyMassKg, movedBodyKg } = lifter;
  return { lift, reference, bodyMassKg, movedBodyKg, sets: log, onDay, truthKg: Math.exp(lnMaximum) };
}
