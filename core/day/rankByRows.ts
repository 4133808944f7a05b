import { gearSums } from './gearSums.ts';
import { aimRows, bestBarKg, misfitOf } from './misfit.ts';
import { finestStepKg } from './plates.ts';
import type { RankingInput, SetupRanking, SetupScore } from './SetupRanking.ts';

/**
 * Ranks by an aim whose misfit is a parabola in the bar's mass (shares of capability, percentages): the best mass is
 * a closed form, and since the parabola is symmetric the loadable mass nearest to it is the best loadable one.
 */
export function rankByRows({ task, gear, sets, loadableKg, countFor }: RankingInput): SetupRanking {
  const rows = aimRows(task, finestStepKg(gear));
  const sums = gearSums(task, gear, rows);
  const scores = sets.map((set, index): SetupScore => {
    const distance = sums.parabolaOf(set);
    const parabola = { ...distance, level: distance.level + sums.feltSquareOf(set) };
    const barKg = nearest(loadableKg, countFor(set), bestBarKg(parabola));
    return { index, barKg, misfit: misfitOf(parabola, barKg) };
  });
  const order = [...scores].sort((a, b) => a.misfit - b.misfit || a.index - b.index);
  const fromBest = () => {
    let given = 0;
    return () => order[given++] ?? null;
  };
  return {
    sets,
    fromBest,
    scoreOf: (index) => scores[index]!,
    lowerBoundOf: (index) => scores[index]!.misfit,
    reps: () => 0,
  };
}

/** The nearest of the first `count` ascending masses; of two equally near the lighter. */
function nearest(ascendingKg: readonly number[], count: number, targetKg: number): number {
  let [low, high] = [0, count - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (ascendingKg[middle]! < targetKg) low = middle;
    else high = middle;
  }
  return targetKg - ascendingKg[low]! <= ascendingKg[high]! - targetKg
    ? ascendingKg[low]!
    : ascendingKg[high]!;
}
