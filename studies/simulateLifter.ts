import { mersenne } from 'pure-rand/generator/mersenne';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import { barPart } from '#core/effort/barPart.ts';
import { repCost } from '#core/effort/repCost.ts';
import { repEffortS } from '#core/effort/repEffort.ts';
import { tiringOf } from '#core/effort/Tiring.ts';
import { shapeFrom } from '#core/lifter/lifterCapability.ts';
import { type Lift, populationShape } from '#core/lifter/populationShape.ts';
import { bareLoad } from '#core/load/bareLoad.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { meanBodyShare } from '#core/load/meanBodyShare.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { normalQuantile } from '#core/numeric/normal.ts';
import { ascend, COARSE } from '#core/rep/ascend.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { fitStrength } from '#core/rep/fitStrength.ts';
import {
  changeOver,
  FURTHER_FALL_LN,
  fallChance,
  LEAST_FALL_LN,
  stillShaken,
} from '#core/strength/change.ts';
import { reboundOf } from '#core/strength/nodeWeights.ts';
import {
  BAD_DAY,
  RESERVE_UNSAID_REPS,
  SET_SD_LN,
  SLIP_SD_LN,
  SLIP_SHARE,
  STOP_SD_S,
  speedSdMps,
  USUAL_DAY,
  WILD_SHARE,
} from '#core/strength/noise.ts';
import { answerSd, saidLeft } from '#core/strength/observation.ts';
import {
  DAY_SD,
  type Parameters,
  parameterNames,
  populationPrior,
  strengthPrior,
} from '#core/strength/parameters.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';

/** A lifter drawn from the prior, with a log that the model itself has written: the truth is known. */
export interface SimulatedLifter {
  lift: Lift;
  reference: Rigging;
  bodyMassKg: number;
  sets: SetEvidence[];
  onDay: number;
  truth: Parameters & { lnTotal: number };
}

export interface Chance {
  uniform(): number;
  normal(): number;
}

/** Random numbers that are the same for the same seed. */
export function chance(seed: number): Chance {
  const generator: RandomGenerator = mersenne(seed);
  const uniform = () => ((generator.next() >>> 0) + 0.5) / 4294967296;
  return { uniform, normal: () => normalQuantile(uniform()) };
}

/** Total mass after a miss of what should have gone, over that before (common practice, no source). */
const LIGHTER_AFTER_MISS = 0.96;

/**
 * Draws a lifter and their true parameters from the prior and lets them train for `weeks` weeks, two to three days a
 * week: a test in the first session, heavy singles, speed sets off a box with bands, sets of five. The coach chooses
 * weights from what was logged alone. Reps are simulated by the model's own equation of motion, not by its tables, and what is
 * written down of them is drawn with the errors that the estimate reads (core/strength/observation.ts).
 */
export function simulateLifter(seed: number, lift: Lift, weeks: number): SimulatedLifter {
  const random = chance(seed);
  const prior = populationPrior(lift);
  const parameters = { ...prior.mean };
  for (const name of parameterNames) parameters[name] += prior.sd[name] * random.normal();
  const bodyMassKg = 60 + 60 * random.uniform();
  const shape = populationShape(lift);
  const movedBodyKg = shape.movedBodyShare * bodyMassKg;
  const range =
    lift === 'bench'
      ? { fromM: 0.65, toM: 1.02 }
      : lift === 'squat'
        ? { fromM: 0.9, toM: 1.46 }
        : { fromM: 0.225, toM: 0.76 };
  const bare = bareLoad(range.fromM, range.toM);
  const reference: Rigging = { load: bare, start: 'free', range };
  const tiring = tiringOf(lift);
  const perSecond = tiring.perSecond * Math.exp(parameters.lnTiring);
  const capabilityOf = (start: Rigging['start']): Capability => ({
    ...shapeFrom(shape, start),
    maxSpeedMps: shape.maxSpeedMps * Math.exp(parameters.lnMaxSpeed),
    slope: shape.slope + parameters.slope,
    rebound: reboundOf(parameters, shape, start),
    strengthN: 1,
    movedBodyKg,
    range,
  });
  const lnPerTotal = Math.log(
    fitStrength({ ...bare, barKg: 100 }, { ...capabilityOf('free'), movedBodyKg: 0 }) / 100,
  );
  const strength = strengthPrior(lift);
  let lnTotal = Math.log(bodyMassKg) + strength.meanLn + strength.sdLn * random.normal();
  const daySd = DAY_SD * Math.exp(parameters.lnDaySd);
  const t4 = () => {
    let squares = 0;
    for (let i = 0; i < 4; i++) squares += random.normal() ** 2;
    return random.normal() / Math.sqrt(squares / 4);
  };

  const sets: SetEvidence[] = [];
  const tired = { fast: 0, slow: 0 };
  let dayLn = 0;
  /** One set as it would go; whether all was made. */
  const lifted = (
    day: number,
    rigging: Rigging,
    barKg: number,
    reps: number,
    measured: boolean,
    said: boolean,
  ): boolean => {
    const restS = 180;
    tired.fast *= Math.exp(-restS / tiring.fastS);
    tired.slow *= Math.exp(-restS / tiring.slowS);
    const load: Load = { ...rigging.load, barKg };
    const compiled = compileLoad(load);
    const share = bandShare(compiled, movedBodyKg);
    const kind = random.uniform();
    const wildMade =
      kind >= WILD_SHARE ? null : random.uniform() < 0.5 ? reps : Math.floor(reps * random.uniform());
    const slip = (kind < WILD_SHARE + SLIP_SHARE ? SLIP_SD_LN : SET_SD_LN) * random.normal();
    const capability = capabilityOf(rigging.start);
    let left =
      dayLn +
      lnPerTotal -
      tired.fast -
      tired.slow -
      parameters.bandError * share -
      (rigging.start === 'free' ? 0 : parameters.startError);
    const restedLn = left;
    const limitLn = Math.log(fitStrength(load, capability));
    const bodyShare = meanBodyShare(compiled, movedBodyKg);
    let made = 0;
    let stoppedAtS: number | null = null;
    let speedMps = 0;
    let possible = 0;
    let lost = 0;
    for (let k = 0; k < 40; k++) {
      const strong = { ...capability, strengthN: Math.exp(left) };
      const lucky = { ...capability, strengthN: Math.exp(left + slip) };
      const ascent = ascend(compiled, strong, COARSE);
      const goes = ascend(compiled, lucky, COARSE);
      const went = ascent.made ? ascent : goes;
      if (k === 0 && went.made)
        speedMps = (load.lockoutM - load.bottomM) / went.states[went.states.length - 1]!.t;
      const isMade = wildMade === null ? goes.made : k < wildMade;
      const loss =
        perSecond * barPart(bodyShare, left - limitLn) * repEffortS(compiled, strong, went, tiring.loweringS);
      if (k < reps) {
        lost += loss;
        if (isMade) made++;
        else {
          const stop = goes.states[goes.states.length - 1]!;
          if (!goes.made) stoppedAtS = (stop.z - range.fromM) / (range.toM - range.fromM) + STOP_SD_S * t4();
          break;
        }
      }
      if (ascent.made) possible++;
      else if (k >= reps - 1) break;
      left -= repCost(k + 1, parameters.tiringBend) * loss;
      if (k >= reps - 1 && !said) break;
    }
    tired.fast += tiring.fastShare * lost;
    tired.slow += (1 - tiring.fastShare) * lost;
    const ok = made === reps;
    const reserve = possible - made + t4() * answerSd(saidLeft, possible - made) - RESERVE_UNSAID_REPS;
    sets.push({
      day,
      rigging,
      barKg,
      movedBodyKg,
      equipment: 'raw',
      barChecked: false,
      platform: false,
      reps,
      made,
      stoppedAtS,
      meanSpeedsMps:
        measured && made > 0 && speedMps > 0
          ? [speedMps + parameters.speedOffset + parameters.speedSlope * Math.max(0, restedLn - limitLn)]
          : [],
      peakSpeedsMps: [],
      repsInReserve: said && ok ? reserve : null,
      restS,
    });
    return ok;
  };

  let guessKg = 0;
  /** Bands are hung by what the first day's test showed, and stay. */
  let riggings: Rigging[] = [];
  const total = (share: number) =>
    Math.max(2.5, Math.round((share * (guessKg + movedBodyKg) - movedBodyKg) / 2.5) * 2.5);
  /** What was too heavy is taken lighter from then on. */
  const lower = () => {
    guessKg = Math.max(2.5, LIGHTER_AFTER_MISS * (guessKg + movedBodyKg) - movedBodyKg);
  };
  const lastDay = 7 * weeks;
  let day = 0;
  let before = 0;
  const startKg = Math.max(
    20,
    0.8 * Math.exp(Math.log(bodyMassKg) + strength.meanLn - 2 * strength.sdLn) - movedBodyKg,
  );
  let kind = 0;
  let shaken = 0;
  /** What so many weeks did to strength; falls are looked for before days with sets alone. */
  const change = (weeks: number, mayFall: boolean) => {
    const { meanLn, sdLn } = changeOver(weeks, parameters);
    lnTotal += meanLn + sdLn * random.normal();
    shaken = stillShaken(shaken, weeks);
    if (!mayFall || random.uniform() > fallChance(weeks, shaken)) return;
    lnTotal -= LEAST_FALL_LN - FURTHER_FALL_LN * Math.log(random.uniform());
    shaken = 1;
  };
  while (day < lastDay) {
    const passed = (day - before) / 7;
    before = day;
    change(passed, day > 0);
    const form = random.uniform() < BAD_DAY.share ? BAD_DAY : USUAL_DAY;
    dayLn = lnTotal + daySd * (form.mean + form.sd * random.normal());
    tired.fast = 0;
    tired.slow = 0;
    const firstOfDay = sets.length;
    if (day === 0) {
      let kg = startKg;
      const test = () => lifted(day, reference, kg, 1, true, false);
      while (kg < 900 && (test() || test())) {
        guessKg = kg;
        kg = Math.round((1.06 * (kg + movedBodyKg) - movedBodyKg) / 2.5) * 2.5 + 2.5;
      }
      if (guessKg === 0) guessKg = Math.max(5, startKg * 0.8);
      riggings = riggingsOf(lift, range, bare, guessKg + movedBodyKg);
    } else if (kind % 3 === 0) {
      const rigging = riggings[Math.floor(random.uniform() * riggings.length)]!;
      let share = rigging === reference ? 0.9 : 0.7;
      for (let i = 0; i < 5; i++) {
        const kg = total(share);
        if (!lifted(day, rigging, kg, 1, random.uniform() < 0.7, false)) {
          if (i === 0) lower();
          break;
        }
        if (rigging === reference) guessKg = Math.max(guessKg, kg);
        share += 0.05;
      }
    } else if (kind % 3 === 1) {
      const rigging = riggings[riggings.length - 1]!;
      for (let i = 0, misses = 0; i < 6 && misses < 2; i++)
        if (!lifted(day, rigging, total(0.6), 2, true, false)) {
          misses++;
          lower();
        }
    } else {
      for (let i = 0; i < 3; i++) if (!lifted(day, reference, total(0.82), 5, false, true)) lower();
    }
    blurSpeeds(sets.slice(firstOfDay), t4);
    kind++;
    day += random.uniform() < 0.5 ? 2 : 4;
  }
  const passed = (lastDay - before) / 7;
  change(passed, false);
  return { lift, reference, bodyMassKg, sets, onDay: lastDay, truth: { ...parameters, lnTotal } };
}

/** Alike sets of a day share part of the error of their speeds. */
function blurSpeeds(sets: SetEvidence[], t4: () => number): void {
  const groups = grouped(sets, keyOf);
  for (const group of groups.values()) {
    const measured = group.filter(({ meanSpeedsMps }) => meanSpeedsMps.length > 0);
    const error = speedSdMps(measured.length) * t4();
    for (const set of measured) set.meanSpeedsMps = set.meanSpeedsMps.map((v) => Math.max(0.01, v + error));
  }
}

function keyOf({ rigging, barKg, reps, made }: SetEvidence): string {
  return `${rigging.start}|${rigging.load.hungBands.length}|${barKg}|${reps}|${made}`;
}

function riggingsOf(lift: Lift, range: Rigging['range'], bare: Rigging['load'], totalKg: number): Rigging[] {
  const span = range.toM - range.fromM;
  const weightN = totalKg * bare.gravityMps2;
  const hung = (lowShare: number, highShare: number) => [
    {
      verticalAt: [
        { zM: range.fromM, forceN: lowShare * weightN },
        { zM: range.toM, forceN: highShare * weightN },
      ],
      count: 1,
    },
  ];
  const straight: Rigging = { load: bare, start: 'free', range };
  if (lift === 'deadlift') {
    return [
      straight,
      { load: { ...bare, bottomM: range.fromM + 0.1 }, start: 'blocks', range },
      { load: { ...bare, hungBands: hung(0.04, 0.22) }, start: 'free', range },
    ];
  }
  const held = lift === 'squat' ? ('box' as const) : ('boards' as const);
  return [
    straight,
    { load: { ...bare, bottomM: range.fromM + 0.05 * span }, start: held, range },
    { load: { ...bare, hungBands: hung(0.07, 0.2) }, start: held, range },
  ];
}

function bandShare(compiled: ReturnType<typeof compileLoad>, movedBodyKg: number): number {
  const { bottomM, lockoutM } = compiled.load;
  let bandN = 0;
  let totalN = 0;
  for (let i = 0; i < 64; i++) {
    const zM = bottomM + ((i + 0.5) / 64) * (lockoutM - bottomM);
    bandN += compiled.bandN(zM);
    totalN += compiled.at(zM).totalN + movedBodyKg * compiled.load.gravityMps2;
  }
  return bandN / totalN;
}
