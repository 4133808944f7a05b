import type { GearSet, RackGear } from './Gear.ts';
import { type GearPiece, gearPieces } from './gearPull.ts';
import {
  type AimRows,
  type BarParabola,
  barParabola,
  type LifterTask,
  meanOf,
  meanSquare,
} from './misfit.ts';

/** Adds up, for any gear set, what its pieces contribute: each piece is worked out once. */
export interface GearSums {
  /** What each hookup, and one pair of each chain kind, adds. */
  hookups: readonly SummedPiece[];
  chains: readonly SummedPiece[];
  /** Expected squared residuals, what is not known of the gear among them; without what a piece must be worth. */
  parabolaOf(set: GearSet): BarParabola;
  /** What the pieces of the set must be worth together. */
  feltSquareOf(set: GearSet): number;
  /** Mean share of the set's pull where the aim looks. */
  meanShareOf(set: GearSet): number;
  /** Mean pull (N) of the set over the travel. */
  meanNOf(set: GearSet): number;
}

export function gearSums(task: LifterTask, gear: RackGear, rows: AimRows): GearSums {
  const pieces = gearPieces(gear, task.travel, task.heightSpread);
  const hookups = pieces.hookups.map((piece) => summed(piece, rows));
  const chains = pieces.chains.map((piece) => summed(piece, rows));
  const size = rows.perKg.length;
  const [rest, byHeight, byBands] = [0, 0, 0].map(() => new Float64Array(size)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const add = (piece: SummedPiece, times: number) => {
    for (let i = 0; i < size; i++) {
      rest[i]! += times * piece.row[i]!;
      byHeight[i]! += times * piece.byHeight[i]!;
      byBands[i]! += times * piece.byBands[i]!;
    }
  };
  const over = (set: GearSet, value: (piece: SummedPiece) => number) =>
    set.hookups.reduce((sum, index) => sum + value(hookups[index]!), 0) +
    set.chainPairs.reduce((sum, pairs, kind) => sum + pairs * value(chains[kind]!), 0);
  return {
    hookups,
    chains,
    parabolaOf(set) {
      rest.set(rows.empty);
      byHeight.fill(0);
      byBands.fill(0);
      for (const index of set.hookups) add(hookups[index]!, 1);
      set.chainPairs.forEach((pairs, kind) => add(chains[kind]!, pairs));
      const parabola = barParabola(rows.perKg, rest);
      const variance = over(set, (piece) => piece.variance) + meanSquare(byHeight) + meanSquare(byBands);
      return { ...parabola, level: parabola.level + variance };
    },
    feltSquareOf: (set) => rows.feltSquare * over(set, () => 1),
    meanShareOf: (set) => over(set, (piece) => piece.meanShare),
    meanNOf: (set) => over(set, (piece) => piece.meanN),
  };
}

/** What one piece adds: residuals, what heights and bands change in them, the variance of its own and its mean share. */
export type SummedPiece = ReturnType<typeof summed>;

function summed({ pull, band, sd, byHeight }: GearPiece, rows: AimRows) {
  return {
    row: rows.gearRow(pull),
    byHeight: rows.shareRow(byHeight),
    byBands: rows.shareRow(band).map((share) => rows.bandErrorSd * share),
    variance: meanSquare(rows.shareRow(sd)),
    meanShare: meanOf(rows.shareRow(pull)),
    meanN: pull.meanN,
  };
}
