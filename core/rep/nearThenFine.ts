import { findLimit, type LimitSearch } from '../numeric/findLimit.ts';
import { COARSE, FINE } from './ascend.ts';

/** A limit of what goes up, where `isBelow` is told how near each rep is worked out: roughly at first, then finely from there. */
export function nearThenFine(
  isBelow: (x: number, tolerance: number) => boolean,
  search: LimitSearch,
): { below: number; above: number } | null {
  const near = findLimit((x) => isBelow(x, COARSE), search);
  return near && findLimit((x) => isBelow(x, FINE), { ...search, guess: near.below, step: search.tolerance });
}
