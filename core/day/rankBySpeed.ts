import type { SetSpeed } from '#core/effort/setSpeed.ts';
import { type CompiledLoad, withBarKg } from '#core/load/compileLoad.ts';
import { minHeap } from '#core/numeric/minHeap.ts';
import { expectedMps, type SpeedCorrection } from '#core/rep/expectedSpeed.ts';
import type { SpeedAim } from './Aim.ts';
import { barSpeeds, quickLoad } from './barSpeed.ts';
import { type Evenness, evenness, leastUnevenness } from './evenness.ts';
import { gearLoad } from './gearLoad.ts';
import { gearSums } from './gearSums.ts';
import { aimRows, speedMiss } from './misfit.ts';
import { finestStepKg } from './plates.ts';
import type { RankingInput, SetupRanking, SetupScore } from './SetupRanking.ts';

/** Bar masses `first` to `last` of one set, between a rep with a bar no heavier than `first` and one no lighter than `last`. */
interface Stretch {
  first: number;
  last: number;
  lighter: SetSpeed;
  heavier: SetSpeed;
  bound: number;
}

/** Masses are not looked at that could better a simulated one by no more: a fifth of what counts as a tie. */
const NEAR = 1e-4;
const WEIGHTLESS: SetSpeed = { mps: Number.POSITIVE_INFINITY, surplusLn: Number.POSITIVE_INFINITY };
const MISSED: SetSpeed = { mps: 0, surplusLn: 0 };

/**
 * Ranks by a bar-speed zone with few simulated reps, best first. Every set starts as one stretch of loadable masses.
 * The spread of a stretch has a closed-form minimum, and since a heavier bar is never faster, the speed at one mass
 * bounds those of all lighter and all heavier ones. Where the lifter's measured speeds differ from the model's, the
 * model's speed and the surplus of strength are bounded so, each by itself, and their correction within both: it need
 * not fall with the mass. The stretch with the least bound is split by one simulated rep
 * until the least bound belongs to a single, simulated mass: nothing left can be better by more than `NEAR`.
 */
export function rankBySpeed(
  { task, gear, sets, loadableKg, countFor }: RankingInput,
  zone: SpeedAim,
): SetupRanking {
  const rows = aimRows(task, finestStepKg(gear));
  const sums = gearSums(task, gear, rows);
  const g = task.travel.gravityMps2;
  const guess = speedGuess();
  const speedOf = barSpeeds(task, zone.over);
  let reps = 0;
  const states = sets.map((set) => {
    const spread = evenness(
      sums.parabolaOf(set),
      rows.sharePerKg,
      sums.meanShareOf(set),
      sums.feltSquareOf(set),
    );
    const whole = { first: 0, last: countFor(set) - 1, lighter: WEIGHTLESS, heavier: MISSED };
    return {
      set,
      spread,
      gearN: sums.meanNOf(set),
      compiled: null as CompiledLoad | null,
      stretches: [{ ...whole, bound: leastSpread(spread, loadableKg, whole.first, whole.last) }] as Stretch[],
    };
  });
  type State = (typeof states)[number];

  const { speedCorrection: correction } = task;
  const readingAt = (state: State, barKg: number): SetSpeed => {
    state.compiled ??= quickLoad(gearLoad(gear, state.set, task.travel, barKg));
    reps++;
    const reading = speedOf(withBarKg(state.compiled, barKg));
    if (reading === null) return MISSED;
    guess.learn(barKg * g + state.gearN, speedsBetween(reading, reading, correction).fastMps);
    return reading;
  };
  const bounded = (state: State, part: Omit<Stretch, 'bound'>): Stretch[] => {
    if (part.first > part.last) return [];
    const spread = leastSpread(state.spread, loadableKg, part.first, part.last);
    const miss = stretchMiss(zone, speedsBetween(part.lighter, part.heavier, correction));
    const near = part.lighter === part.heavier ? 0 : NEAR;
    return [{ ...part, bound: Math.hypot(spread, miss) + near }];
  };
  /** Splits the most promising stretch at one mass and simulates there. */
  const refine = (state: State): void => {
    const [best] = state.stretches;
    const at = splitAt(best!, state, loadableKg, zone, (barKg) => guess.speedMps(barKg * g + state.gearN));
    const reading = readingAt(state, loadableKg[at]!);
    const parts = [
      ...bounded(state, { first: best!.first, last: at - 1, lighter: best!.lighter, heavier: reading }),
      ...bounded(state, { first: at, last: at, lighter: reading, heavier: reading }),
      ...bounded(state, { first: at + 1, last: best!.last, lighter: reading, heavier: best!.heavier }),
    ];
    state.stretches = [...state.stretches.slice(1), ...parts].sort(
      (a, b) => a.bound - b.bound || a.first - b.first,
    );
  };
  const isScored = (state: State) => state.stretches[0]!.lighter === state.stretches[0]!.heavier;
  const score = (index: number): SetupScore => {
    const { first, bound } = states[index]!.stretches[0]!;
    return { index, barKg: loadableKg[first]!, misfit: bound };
  };

  const fromBest = () => {
    const queue = minHeap();
    states.forEach((state, index) => queue.push(index, state.stretches[0]!.bound));
    return () => {
      for (let top = queue.pop(); top !== null; top = queue.pop()) {
        const state = states[top.index]!;
        // Whoever asked about this set in between may have lifted its bound: it then waits for its turn again.
        if (state.stretches[0]!.bound <= top.key) {
          if (isScored(state)) return score(top.index);
          refine(state);
        }
        queue.push(top.index, state.stretches[0]!.bound);
      }
      return null;
    };
  };
  return {
    sets,
    fromBest,
    scoreOf(index) {
      while (!isScored(states[index]!)) refine(states[index]!);
      return score(index);
    },
    lowerBoundOf: (index) => states[index]!.stretches[0]!.bound,
    reps: () => reps,
  };
}

/** Least spread over a run of masses: at the parabola's lowest point, or at the end of the run nearest to it. */
function leastSpread(spread: Evenness, kg: readonly number[], first: number, last: number): number {
  return leastUnevenness(spread, kg[first]!, kg[last]!);
}

/**
 * What every bar between two reps is expected to be lifted with at the least and at the most: model speed and surplus both
 * lie between those of the two, whatever the sign of the correction.
 */
function speedsBetween(lighter: SetSpeed, heavier: SetSpeed, correction: SpeedCorrection | undefined) {
  if (correction === undefined) return { slowMps: heavier.mps, fastMps: lighter.mps };
  const rises = correction.perSurplusMps >= 0;
  const [least, most] = rises ? [heavier, lighter] : [lighter, heavier];
  const expected = ({ mps }: SetSpeed, { surplusLn }: SetSpeed) =>
    mps === 0 ? 0 : expectedMps(mps, surplusLn, correction);
  return { slowMps: expected(heavier, least), fastMps: expected(lighter, most) };
}

/** The least miss of a speed that lies between two: at the middle of the zone, or at the end nearer to it. */
function stretchMiss(zone: SpeedAim, { slowMps, fastMps }: { slowMps: number; fastMps: number }): number {
  return speedMiss(zone, Math.min(Math.max((zone.fromMps + zone.toMps) / 2, slowMps), fastMps));
}

/**
 * Where one rep tells most: at the mass where the bounds of the lighter and of the heavier part are expected to be
 * equal. The first falls and the second rises with the mass, so bisection finds it.
 */
function splitAt(
  { first, last }: Stretch,
  { spread }: { spread: Evenness },
  kg: readonly number[],
  zone: SpeedAim,
  guessMps: (barKg: number) => number | null,
): number {
  let [low, high] = [first, last];
  while (low < high) {
    const at = (low + high) >> 1;
    const speedMps = guessMps(kg[at]!);
    if (speedMps === null) return at;
    const faster = stretchMiss(zone, { slowMps: speedMps, fastMps: Number.POSITIVE_INFINITY });
    const slower = stretchMiss(zone, { slowMps: 0, fastMps: speedMps });
    const lighter = Math.hypot(faster, leastSpread(spread, kg, first, at));
    const heavier = Math.hypot(slower, leastSpread(spread, kg, at, last));
    if (lighter > heavier) low = at + 1;
    else high = at;
  }
  return low;
}

/** A straight line of speed over mean load through the reps so far; only steers the search, proves nothing. */
function speedGuess() {
  let [n, sumX, sumY, sumXX, sumXY] = [0, 0, 0, 0, 0];
  return {
    learn(loadN: number, speedMps: number) {
      n++;
      sumX += loadN;
      sumY += speedMps;
      sumXX += loadN * loadN;
      sumXY += loadN * speedMps;
    },
    speedMps(loadN: number): number | null {
      const spreadX = n * sumXX - sumX * sumX;
      if (spreadX <= 0) return null;
      const slope = (n * sumXY - sumX * sumY) / spreadX;
      return Math.max(0, sumY / n + slope * (loadN - sumX / n));
    },
  };
}
