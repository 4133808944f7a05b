import { findLimit } from '../numeric/findLimit.ts';
import { expectedMps, type SpeedCorrection } from '../rep/expectedSpeed.ts';
import { expectedSetMps, setSpeed } from './setSpeed.ts';
import { repAtSurplus } from './simulateSet.ts';
import type { Tiring } from './Tiring.ts';
import { type SessionBlock, type Step, walkSession } from './walkSession.ts';

/** How one block of a session goes. */
export interface BlockOutcome {
  /** Mean speeds of the first rep of the first set and of the last rep of the last; 0 and null where it is missed. */
  firstMps: number;
  lastMps: number | null;
  /** Mean over all reps of the first set; null where one of them is missed. */
  setMps: number | null;
  /** ln strength that is still missing from the blocks before when the first rep starts. */
  tiredLn: number;
  /** Ways up and down of the first set. */
  underStrainS: number;
  /** The first rep that is not made, counted from 1, and where it stops on the lifter's own range. */
  missed: { set: number; rep: number; stoppedAtS: number } | null;
  /**
   * ln strength to spare: so much weaker, and all reps up to the end of this block are just made; negative: so much
   * stronger it would take. So the chance of all reps is that of a strength above the lifter's own less this.
   */
  marginLn: number;
}

/** Margins are found to a tenth of a per cent, and sought within a factor of seven either way. */
const TOLERANCE_LN = 1e-3;
const WIDEST_LN = 2;

/** A session from rested; tiredness is carried from set to set and from block to block. */
export function simulateSession(blocks: readonly SessionBlock[], tiring: Tiring): BlockOutcome[] {
  return blocks.map((_, index) => lastBlock(blocks.slice(0, index + 1), tiring));
}

/** How the last of the blocks goes, after all those before it; speeds as the model's, or as corrected for this lifter. */
export function lastBlock(
  blocks: readonly SessionBlock[],
  tiring: Tiring,
  correction?: SpeedCorrection,
): BlockOutcome {
  const { table } = blocks[blocks.length - 1]!;
  const sets = walkSession(blocks, tiring, 0)[blocks.length - 1]!;
  const firstSet = sets[0]!;
  const lastSet = sets[sets.length - 1]!;
  const rep = ({ surplusLn }: Step) => {
    const { made, meanSpeedMps, stoppedAtS } = repAtSurplus(table, surplusLn);
    const mps = correction && made ? expectedMps(meanSpeedMps, surplusLn, correction) : meanSpeedMps;
    return { made, mps, stoppedAtS };
  };
  const first = rep(firstSet[0]!);
  const last = rep(lastSet[lastSet.length - 1]!);
  return {
    firstMps: first.made ? first.mps : 0,
    setMps: meanOfSet(table, firstSet, first.mps, correction),
    tiredLn: table.restedLn - firstSet[0]!.surplusLn,
    // A correction that falls with the surplus must not make a tired rep the faster one.
    lastMps: last.made ? Math.min(first.mps, last.mps) : null,
    underStrainS: firstSet.reduce(
      (sum, { surplusLn }) => sum + tiring.loweringS + table.durationS(surplusLn),
      0,
    ),
    missed: last.made ? null : { set: sets.length, rep: lastSet.length, stoppedAtS: last.stoppedAtS! },
    marginLn: marginLn(blocks, tiring),
  };
}

/** A single is its own mean. */
function meanOfSet(
  table: SessionBlock['table'],
  set: readonly Step[],
  firstMps: number,
  correction: SpeedCorrection | undefined,
): number | null {
  const speed = setSpeed(table, set, correction?.upToLn ?? 0);
  if (speed === null) return null;
  return set.length === 1 ? firstMps : Math.min(firstMps, expectedSetMps(speed, correction));
}

function marginLn(blocks: readonly SessionBlock[], tiring: Tiring): number {
  const allMade = (weakerLn: number) =>
    walkSession(blocks, tiring, -weakerLn).every((sets) => sets.every(isMade));
  const limit = findLimit(allMade, {
    guess: 0,
    step: 0.05,
    tolerance: TOLERANCE_LN,
    lowest: -WIDEST_LN,
    highest: WIDEST_LN,
  });
  if (limit !== null) return limit.below;
  return allMade(0) ? WIDEST_LN : -WIDEST_LN;
}

function isMade(set: readonly Step[]): boolean {
  return set[set.length - 1]!.surplusLn >= 0;
}
