/** A function read off `cells` even cells between two places, straight within each and on beyond the ends. */
export function gridded(
  f: (x: number) => number,
  from: number,
  to: number,
  cells: number,
): (x: number) => number {
  const values = Float64Array.from({ length: cells + 1 }, (_, i) => f(from + (i / cells) * (to - from)));
  const perCell = cells / (to - from);
  return (x) => {
    const at = (x - from) * perCell;
    const cell = at < 0 ? 0 : at >= cells ? cells - 1 : Math.floor(at);
    const low = values[cell]!;
    return low + (at - cell) * (values[cell + 1]! - low);
  };
}
