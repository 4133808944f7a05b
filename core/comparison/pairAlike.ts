import { grouped } from '#core/numeric/grouped.ts';
import { bestPairs } from './bestPairs.ts';

/** One who may be drawn, as far as pairing goes. */
export interface Alike {
  lifterId: string;
  /** Only lifters of one block are paired: sex, equipment. */
  block: string;
  /** The same traits in the same order for everybody, in any units; null: not known, which counts as the middle. */
  traits: readonly (number | null)[];
}

export interface PairedLifters {
  /** The order of both in a pair and of the pairs is that of the ids. `distance`: in standard deviations of the traits. */
  pairs: { lifterIds: readonly [string, string]; distance: number }[];
  /** Who is left over, at most one a block. */
  alone: string[];
}

/**
 * Pairs the most alike before lots are drawn: the least sum of Euclidean distances over standardised traits, within blocks (Greevy et
 * al. 2004, Biostatistics 5:263, from memory). Of an odd block stays alone whose pairing would cost most. The order given does not matter.
 */
export function pairAlike(lifters: readonly Alike[]): PairedLifters {
  const ordered = lifters.toSorted(byId);
  const standard = standardised(ordered.map(({ traits }) => traits));
  const placed = ordered.map(({ lifterId, block }, i) => ({ lifterId, block, at: standard[i]! }));
  const pairs: PairedLifters['pairs'] = [];
  const alone: string[] = [];
  for (const block of grouped(placed, (one) => one.block).values()) {
    // The place after the last stands for nobody: paired with it at no cost, one is left over.
    const distance = (a: number, b: number) =>
      Math.max(a, b) === block.length ? 0 : apart(block[a]!.at, block[b]!.at);
    for (const [a, b] of bestPairs(block.length + (block.length % 2), distance)) {
      const [one, other] = [block[a]!, block[b]];
      if (other === undefined) alone.push(one.lifterId);
      else pairs.push({ lifterIds: [one.lifterId, other.lifterId], distance: distance(a, b) });
    }
  }
  pairs.sort((a, b) => inOrder(a.lifterIds[0], b.lifterIds[0]));
  return { pairs, alone: alone.sort(inOrder) };
}

/** By code units, as no machine's language changes them. */
function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function byId(a: Alike, b: Alike): number {
  return inOrder(a.lifterId, b.lifterId);
}

/** Each trait less its mean, over its standard deviation; nought where it is not known or the same for all. */
function standardised(rows: readonly (readonly (number | null)[])[]): number[][] {
  const columns = (rows[0] ?? []).map((_, k) => {
    const known = rows.flatMap((row) => row[k] ?? []);
    const mean = known.reduce((sum, value) => sum + value, 0) / known.length;
    const sd = Math.sqrt(known.reduce((sum, value) => sum + (value - mean) ** 2, 0) / known.length);
    return { mean, sd };
  });
  return rows.map((row) =>
    row.map((value, k) =>
      value === null || !(columns[k]!.sd > 0) ? 0 : (value - columns[k]!.mean) / columns[k]!.sd,
    ),
  );
}

function apart(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(...a.map((value, k) => value - b[k]!));
}
