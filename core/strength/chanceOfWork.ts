import { type Asked, chanceToSpare, type SetExpected, setExpected } from './askDraws.ts';
import type { Draw } from './Draw.ts';
import type { LiftModel } from './readGroup.ts';

/**
 * A block of sets as the central draw meets it: the bar, and ln strength it has to spare for all reps of all sets, once for
 * each way to rest.
 */
export interface Work {
  barKg: number;
  reps: number;
  marginsLn: readonly number[];
}

/** What is believed of a block: the chance of all its reps for each of the margins, and what each draw expects of its first set. */
export interface WorkExpected {
  chancesAllReps: number[];
  sets: SetExpected[];
}

/**
 * Chances and speeds over all draws from the session of the central one. What a set takes up to its last rep each draw loses as its own
 * tiring has it; what the central draw has lost beyond that by its hardest rep, carried from set to set, each draw
 * carries by its own tiring; what it has to spare at the first rep, each draw has more or less.
 */
export function chanceOfWork(
  lift: LiftModel,
  asked: Asked,
  { barKg, reps, marginsLn }: Work,
  central: Draw,
  draws: readonly Draw[],
): WorkExpected {
  // The session of the central draw was worked out with the bands as they are read.
  const asRead = { ...central, bandError: 0 };
  const [middle, ...each] = setExpected(lift, asked, { barKg, reps }, [asRead, ...draws]);
  const chanceOf = (marginLn: number) => {
    const carriedLn = Math.max(0, middle!.spareLn - middle!.lostLn - marginLn);
    const chances = each.map(({ spareLn, lostLn }, i) => {
      const draw = draws[i]!;
      const ownCarriedLn = carriedLn * Math.exp(draw.lnTiring - central.lnTiring);
      return chanceToSpare(spareLn - lostLn - ownCarriedLn, draw);
    });
    return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
  };
  return {
    chancesAllReps: marginsLn.map(chanceOf),
    sets: each,
  };
}
