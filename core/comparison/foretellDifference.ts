import { fitMixed } from '../evidence/fitMixed.ts';
import { crossProducts, profileAt } from '../evidence/mixedProfile.ts';
import { NORMAL_95, normalCdf } from '../numeric/normal.ts';
import { type SeededChance, seededChance } from '../numeric/seededChance.ts';
import { studentTQuantile } from '../numeric/studentT.ts';
import { inverseOfSquare } from '../numeric/triangle.ts';
import type { Way } from './drawWays.ts';
import type { Scatter } from './Scatter.ts';
import { differenceAt, LEAST_A_WAY, tellingOf, type WayTest, wayProblem } from './wayDifference.ts';

/** A comparison that nobody has begun. */
export interface Foreseen {
  /** Lifters of either way. */
  lifters: readonly [number, number];
  /** When everybody is tested, from week 0 to the last. */
  testWeeks: readonly number[];
  scatter: Pick<Scatter, 'gainSd' | 'testSd'>;
  /** So many of all leave before the end, at any test after the first. */
  leavingShare: number;
  seed: number;
  /** How often it is played through. */
  plays: number;
  /** Hears how many of the plays are done. */
  told?: (done: number) => void;
}

/** What could be seen of it. */
export interface Foretold {
  /** The true difference at the last week, in ln, whose 95 % range leaves nought out in four of five such comparisons; null: none. */
  detectableLn: number | null;
  /** The simulation's own error of it: half of the range that holds it with 95 %. */
  errorLn: number | null;
  /** How often a true difference of this size would be seen, 0 to 1. */
  chanceToSee(differenceLn: number): number;
}

const POWER = 0.8;
/** Nobody gains this much more than somebody else. */
const MOST_LN = 2;
const HALVINGS = 60;
/** Own levels are taken off again; any spread of them gives the same (assumption). */
const LEVEL_SD = 0.2;

/**
 * Plays the comparison through with nought between the ways and weighs each play by the same regression as the real one. A true difference
 * moves an estimate and nothing else, neither its standard error s nor its degrees of freedom, and an estimate is independent of s: so
 * that each play tells the chance for every difference d at once, `F((d - t s) / S) + F((-d - t s) / S)`, S the standard error by the true
 * scatter in that play's tests, t of Student, F the normal distribution function. The mean over the plays is the power; only t s is left to chance.
 */
export function foretellDifference(foreseen: Foreseen): Foretold {
  const chance = seededChance(foreseen.seed);
  const plays = Array.from({ length: foreseen.plays }, (_, done) => {
    foreseen.told?.(done);
    return playOnce(foreseen, chance);
  });
  const chances = (d: number) =>
    plays.map((play) =>
      play === null ? 0 : normalCdf((d - play.half) / play.sd) + normalCdf((-d - play.half) / play.sd),
    );
  const chanceToSee = (d: number) => meanOf(chances(d));
  if (!(chanceToSee(MOST_LN) >= POWER)) return { detectableLn: null, errorLn: null, chanceToSee };
  let [low, high] = [0, MOST_LN];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (chanceToSee(middle) < POWER) low = middle;
    else high = middle;
  }
  const at = chances(high);
  const scatter = Math.sqrt(meanOf(at.map((c) => (c - POWER) ** 2)) / foreseen.plays);
  const rise = (chanceToSee(1.01 * high) - chanceToSee(0.99 * high)) / (0.02 * high);
  return { detectableLn: high, errorLn: (NORMAL_95 * scatter) / rise, chanceToSee };
}

/** Half of the 95 % range that this play's tests give, and the true standard error; null where too few stayed to tell anything. */
function playOnce(foreseen: Foreseen, chance: SeededChance): { half: number; sd: number } | null {
  const tests = playedTests(foreseen, chance);
  if (Math.min(...tellingOf(tests)) < LEAST_A_WAY) return null;
  const lastWeek = foreseen.testWeeks.at(-1)!;
  const { sd, degreesOfFreedom } = differenceAt(fitMixed(wayProblem(tests)), lastWeek);
  return {
    half: studentTQuantile(0.975, degreesOfFreedom) * sd,
    sd: lastWeek * trueSd(tests, foreseen.scatter),
  };
}

function playedTests(
  { lifters, testWeeks, scatter, leavingShare }: Foreseen,
  chance: SeededChance,
): WayTest[] {
  return ([0, 1] as Way[]).flatMap((way) =>
    Array.from({ length: lifters[way] }, (_, i) => {
      const level = LEVEL_SD * chance.normal();
      const gain = scatter.gainSd * chance.normal();
      const leaves = chance.share() < leavingShare;
      const kept = leaves ? 1 + Math.floor(chance.share() * (testWeeks.length - 1)) : testWeeks.length;
      return testWeeks.slice(0, kept).map((week) => ({
        lifterId: `${way} ${i}`,
        way,
        week,
        lnValue: level + gain * week + scatter.testSd * chance.normal(),
      }));
    }).flat(),
  );
}

/** Standard error of the difference a week were the scatter known: that of generalised least squares at the truth. */
function trueSd(tests: readonly WayTest[], { gainSd, testSd }: Foreseen['scatter']): number {
  const cross = crossProducts(wayProblem(tests, true));
  const { fixedRoot } = profileAt(cross, [LEVEL_SD / testSd, 0, gainSd / testSd]);
  return testSd * Math.sqrt(inverseOfSquare(fixedRoot, cross.p).at(-1)!.at(-1)!);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
