import type { RackGear } from './Gear.ts';
import type { GearSums, SummedPiece } from './gearSums.ts';
import type { AimRows, LifterTask } from './misfit.ts';

/**
 * A plane under the squared misfit of all sets at once: with any bar of the range
 *
 *   misfit^2 >= base + sum of `hookups` over what hangs + sum of pairs times `chains`
 */
export interface MisfitPlane {
  base: number;
  hookups: readonly number[];
  chains: readonly number[];
}

/** The misfit where pieces of gear need not be whole is found by so many rounds through all of them; any number holds. */
const ROUNDS = 300;
/** Planes touch where the bar has this share of the residuals of that point; 0 counts only what pieces must be worth. */
const TOUCHES = [1, 0.5, 0];

/**
 * Residuals z are linear in bar and pieces, and `|z|^2 >= 2 y z - |y|^2` whatever y is (the square lies above its tangents).
 * The plane says most where y are the residuals of the best choice with pieces that need not be whole, which a descent
 * along one piece after another comes near to. For a speed zone only what the pieces must be worth is counted.
 */
export function misfitPlanes(
  { aim }: Pick<LifterTask, 'aim'>,
  gear: Pick<RackGear, 'chains'>,
  rows: AimRows,
  sums: GearSums,
  usable: readonly number[],
  bar: { leastKg: number; mostKg: number },
): MisfitPlane[] {
  if (aim.by === 'speed') {
    const worth = () => rows.feltSquare;
    return [{ base: 0, hookups: sums.hookups.map(worth), chains: sums.chains.map(worth) }];
  }
  const size = rows.perKg.length;
  const empty = Float64Array.from([...rows.empty, ...rows.empty.map(() => 0), ...rows.empty.map(() => 0)]);
  const barRow = Float64Array.from(empty, (_, i) => rows.perKg[i] ?? 0);
  const hookups = sums.hookups.map((piece) => residualsOf(piece, rows));
  const chains = sums.chains.map((piece) => residualsOf(piece, rows));
  const z = Float64Array.from(empty);
  const parts = [
    ...usable.map((index) => ({ ...hookups[index]!, least: 0, most: 1 })),
    ...chains.map((piece, kind) => ({ ...piece, least: 0, most: gear.chains[kind]!.pairs })),
    // The bar comes last: its slope is then 0, where a little would count for many kilograms.
    { row: barRow, cost: 0, least: bar.leastKg, most: bar.mostKg },
  ];
  const amounts = parts.map(({ least }) => least);
  /** By how much the mean square of residuals `at` rises with each `row` that is added. */
  const slopeAt = (at: Float64Array, row: Float64Array) => (2 * dot(at, row)) / size;
  const curvatures = parts.map(({ row }) => slopeAt(row, row));
  parts.forEach(({ row }, part) => addTo(z, row, amounts[part]!));
  for (let round = 0; round < ROUNDS; round++) {
    parts.forEach(({ row, cost, least, most }, part) => {
      const curvature = curvatures[part]!;
      if (curvature === 0) return;
      const free = amounts[part]! - (slopeAt(z, row) + cost) / curvature;
      const amount = Math.min(most, Math.max(least, free));
      if (amount === amounts[part]) return;
      addTo(z, row, amount - amounts[part]!);
      amounts[part] = amount;
    });
  }
  return TOUCHES.map((share) => {
    const y = z.map((value) => share * value);
    const barSlope = slopeAt(y, barRow);
    const ofBar = Math.min(barSlope * bar.leastKg, barSlope * bar.mostKg);
    return {
      base: slopeAt(y, empty) - dot(y, y) / size + ofBar,
      hookups: hookups.map(({ row, cost }) => cost + slopeAt(y, row)),
      chains: chains.map(({ row, cost }) => cost + slopeAt(y, row)),
    };
  });
}

/** Residuals, heights and bands of a piece one below the other, and what it costs beside them. */
function residualsOf({ row, byHeight, byBands, variance }: SummedPiece, { feltSquare }: AimRows) {
  return { row: Float64Array.from([...row, ...byHeight, ...byBands]), cost: variance + feltSquare };
}

function addTo(sum: Float64Array, row: Float64Array, times: number): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += times * row[i]!;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
