import { type Lift, populationShape } from '#core/lifter/populationShape.ts';
import { bareLoad } from '#core/load/bareLoad.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import type { Chance } from '../simulateLifter.ts';
import { drawOther, type ModelName } from './otherModels.ts';

/** A lifter of another model at work: lifts straight bars from the competition start and writes down as people do. */
export interface OtherLifter {
  reference: Rigging;
  bodyMassKg: number;
  movedBodyKg: number;
  /** Maximum bar before the first day (kg). */
  maximumKg: number;
  /** What this lifter writes down. */
  writes: { speeds: boolean; repsLeft: boolean };
  /** Reps that this lifter likes to keep in hand in sets of several. */
  keepsReps: number;
  /** Share of the maximum with which `reps` are just possible. */
  shareFor(reps: number): number;
  /** Whether all reps of the set were made; it is put at the end of `log`. `beforeSets`: how many were done that day. */
  lifts(log: SetEvidence[], set: AskedSet): boolean;
}

export interface AskedSet {
  day: number;
  barKg: number;
  reps: number;
  /** Maximum bar on the day, form included (kg). */
  todayKg: number;
  beforeSets: number;
  /** Nothing but weight and reps is written down. */
  silent: boolean;
}

/** Maximum bars over body mass and their spread in ln (assumptions, from the middle of a club down to its beginners). */
const MAXIMUM: Record<Lift, readonly [number, number]> = {
  squat: [1.6, 0.25],
  bench: [1.05, 0.25],
  deadlift: [1.9, 0.25],
};
const RANGE: Record<Lift, Rigging['range']> = {
  squat: { fromM: 0.9, toM: 1.46 },
  bench: { fromM: 0.65, toM: 1.02 },
  deadlift: { fromM: 0.225, toM: 0.76 },
};
/** Reps left in a usual set: 1 to 4 (common practice, no source). */
const KEEPS_LEAST = 1;
const KEEPS_MOST = 4;
/** Three minutes' rest leaves about so much less for each set before (assumption). */
const TIRED_BY_SET = 0.02;
/** Reps left are told too low by a quarter, in whole numbers (assumption, after Steele et al. 2017, PeerJ 5:e4105: too few are told). */
const TOLD_SHARE = 0.75;
const TOLD_SD_REPS = 0.7;
/** A device's error, and how many sets are measured, how often reps left are told (assumptions). */
const SPEED_SD_MPS = 0.04;
const MEASURED_SHARE = 0.6;
const SAID_SHARE = 0.6;
/** Of easy sets nobody says what was left. */
const MOST_SAID = 6;
const SET_SD_LN = 0.012;

export function drawLifter(model: ModelName, lift: Lift, random: Chance): OtherLifter {
  const { uniform, normal } = random;
  const range = RANGE[lift];
  const reference: Rigging = { load: bareLoad(range.fromM, range.toM), start: 'free', range };
  const bodyMassKg = 60 + 60 * uniform();
  const movedBodyKg = populationShape(lift).movedBodyShare * bodyMassKg;
  const [share, sdLn] = MAXIMUM[lift];
  const maximumKg = bodyMassKg * share * Math.exp(sdLn * normal());
  const other = drawOther(model, lift, random);
  const habit = uniform();
  const writes = { speeds: habit < 2 / 3, repsLeft: habit > 1 / 3 };
  const shareFor = (reps: number) => {
    let [low, high] = [0.3, 1];
    for (let i = 0; i < 30; i++) {
      const middle = (low + high) / 2;
      if (other.repsAt(middle) > reps) low = middle;
      else high = middle;
    }
    return low;
  };
  const lifts: OtherLifter['lifts'] = (log, { day, barKg, reps, todayKg, beforeSets, silent }) => {
    const mine = barKg / (todayKg * Math.exp(SET_SD_LN * normal()));
    // A rep that is just possible is half a rep to spare away from the next one.
    const possible =
      mine > 1 ? 0 : Math.floor(Math.max(1, other.repsAt(mine) * (1 - TIRED_BY_SET * beforeSets)));
    const made = Math.min(reps, possible);
    const measured = !silent && writes.speeds && made > 0 && uniform() < MEASURED_SHARE;
    const left = possible - made;
    const said = !silent && writes.repsLeft && made === reps && left <= MOST_SAID && uniform() < SAID_SHARE;
    const speedMps = Math.max(0.03, other.speedAtMps(mine) + SPEED_SD_MPS * normal());
    const told = Math.round(TOLD_SHARE * left + TOLD_SD_REPS * normal());
    log.push({
      day,
      rigging: reference,
      barKg,
      movedBodyKg,
      equipment: 'raw',
      barChecked: false,
      platform: false,
      reps,
      made,
      stoppedAtS: null,
      meanSpeedsMps: measured ? [Math.round(100 * speedMps) / 100] : [],
      peakSpeedsMps: [],
      repsInReserve: said ? Math.max(0, told) : null,
      restS: null,
    });
    return made === reps;
  };
  const keepsReps = KEEPS_LEAST + (KEEPS_MOST - KEEPS_LEAST) * uniform();
  return { reference, bodyMassKg, movedBodyKg, maximumKg, writes, keepsReps, shareFor, lifts };
}
