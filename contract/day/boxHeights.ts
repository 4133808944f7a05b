import type { Box } from '#contract/records/gear.ts';

/** A height one can build: one box with mats under it. */
export interface BuiltBox {
  heightM: number;
  /** What it is built of, the box first: ["Box 33", "2 × Mat 1.5"]. */
  words: string[];
  stack: Stack;
}

/** Pieces of the club's and how many of each. */
type Stack = readonly { piece: Box; count: number }[];

/** More mats than this under one box rock. Assumption, common practice. */
const mostMats = 3;

/** Every height that one of the club's boxes gives with up to three of its mats, lowest first, each built with the fewest pieces. */
export function boxHeights(gear: readonly Box[]): BuiltBox[] {
  const boxes = gear.filter((piece) => piece.sort === 'box' && piece.pieces > 0);
  const mats = gear.filter((piece) => piece.sort === 'mat' && piece.pieces > 0);
  const fewest = new Map<number, Stack>();
  for (const box of boxes) {
    for (const under of matStacks(mats, mostMats)) {
      const stack = [{ piece: box, count: 1 }, ...under];
      const mm = Math.round(1000 * stack.reduce((sum, { piece, count }) => sum + count * piece.heightM, 0));
      const known = fewest.get(mm);
      if (known === undefined || piecesOf(stack) < piecesOf(known)) fewest.set(mm, stack);
    }
  }
  return [...fewest]
    .map(([mm, stack]) => ({ heightM: mm / 1000, words: stack.map(inWords), stack }))
    .sort((a, b) => a.heightM - b.heightM);
}

/** The one of that height, to the millimetre; undefined where the club cannot build it. */
export function boxOfHeight(built: readonly BuiltBox[], heightM: number): BuiltBox | undefined {
  return built.find((box) => Math.round(1000 * box.heightM) === Math.round(1000 * heightM));
}

/** The one nearest to a height, of two that are as near the higher, which is less deep; undefined where the club has no box. */
export function nearestBox(built: readonly BuiltBox[], heightM: number): BuiltBox | undefined {
  const offMm = (box: BuiltBox) => Math.abs(Math.round(1000 * (box.heightM - heightM)));
  return built.reduce<BuiltBox | undefined>(
    (best, box) => (best === undefined || offMm(box) <= offMm(best) ? box : best),
    undefined,
  );
}

function matStacks(mats: readonly Box[], most: number): Stack[] {
  const [mat, ...others] = mats;
  if (mat === undefined) return [[]];
  return Array.from({ length: Math.min(most, mat.pieces) + 1 }, (_, count) => count).flatMap((count) =>
    matStacks(others, most - count).map((rest) => (count > 0 ? [{ piece: mat, count }, ...rest] : rest)),
  );
}

function piecesOf(stack: Stack): number {
  return stack.reduce((sum, { count }) => sum + count, 0);
}

function inWords({ piece, count }: Stack[number]): string {
  return count === 1 ? piece.label : `${count} × ${piece.label}`;
}
