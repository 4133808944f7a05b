import { repCost } from '../effort/repCost.ts';
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
 * Chances and speeds over all draws from the session of the central one: what the central draw loses from its first rep to
 * the hardest one, each draw loses by its own tiring; what it has to spare at the first, each draw has more or less.
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
    const lostLn = Math.max(0, middle!.spareLn - marginLn);
    const chances = each.map(({ spareLn }, i) => {
      const draw = draws[i]!;
      const more = setCost(reps, draw) / setCost(reps, central);
      return chanceToSpare(spareLn - lostLn * more, draw);
    });
    return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
  };
  return {
    chancesAllReps: marginsLn.map(chanceOf),
    sets: each,
  };
}

/** What the reps before the last one of a set cost a draw, but for what all draws have in common. */
function setCost(reps: number, { lnTiring, tiringBend }: Draw): number {
  const costs = Array.from({ length: Math.max(1, reps - 1) }, (_, i) => repCost(i + 1, tiringBend));
  return Math.exp(lnTiring) * costs.reduce((sum, cost) => sum + cost, 0);
}
