import type { Box } from '#contract/records/gear.ts';

/** A height one can build: one box with mats under it. */
export interface BuiltBox {
  heightM: number;
  /** "Box 33 and Mat 2.5" */
  words: string;
  pieces: number;
}

/** More mats than this under one box rock. Assumption, common practice. */
const mostMats = 3;

/** Every height that one of the club's boxes gives with up to three of its mats, lowest first, each built with the fewest pieces. */
export function boxHeights(gear: readonly Box[]): BuiltBox[] {
  const boxes = gear.filter((piece) => piece.sort === 'box' && piece.pieces > 0);
  const mats = gear.filter((piece) => piece.sort === 'mat' && piece.pieces > 0);
  const built = boxes.flatMap((box) =>
    matStacks(mats, mostMats).map(
      (stack): BuiltBox => ({
        heightM: box.heightM + stack.heightM,
        words: [box.label, ...stack.words].join(' and '),
        pieces: 1 + stack.pieces,
      }),
    ),
  );
  const fewest = new Map<number, BuiltBox>();
  for (const box of built) {
    const mm = Math.round(box.heightM * 1000);
    const known = fewest.get(mm);
    if (known === undefined || box.pieces < known.pieces) fewest.set(mm, { ...box, heightM: mm / 1000 });
  }
  return [...fewest.values()].sort((a, b) => a.heightM - b.heightM);
}

interface Stack {
  heightM: number;
  words: string[];
  pieces: number;
}

function matStacks(mats: readonly Box[], most: number): Stack[] {
  const [mat, ...others] = mats;
  if (mat === undefined) return [{ heightM: 0, words: [], pieces: 0 }];
  return Array.from({ length: Math.min(most, mat.pieces) + 1 }, (_, count) => count).flatMap((count) =>
    matStacks(others, most - count).map((rest) => ({
      heightM: count * mat.heightM + rest.heightM,
      words: [...(count > 0 ? [count === 1 ? mat.label : `${count} × ${mat.label}`] : []), ...rest.words],
      pieces: count + rest.pieces,
    })),
  );
}
