const MOST_STEPS = 1000;

/**
 * The x at which f is least, near `start`, without derivatives: the simplex of Nelder & Mead (1965, Comput J 7:308),
 * with `edge` as the first length of its sides. It ends when the values at its corners agree to `tolerance`.
 */
export function simplexMinimum(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  edge: number,
  tolerance: number,
): number[] {
  const corner = (x: number[]) => ({ x, value: f(x) });
  const corners = [
    corner([...start]),
    ...start.map((_, i) => corner(start.map((value, k) => (k === i ? value + edge : value)))),
  ];
  for (let step = 0; step < MOST_STEPS; step++) {
    corners.sort((a, b) => a.value - b.value);
    const [best, worst, second] = [corners[0]!, corners.at(-1)!, corners.at(-2)!];
    if (worst.value - best.value <= tolerance) break;
    const others = corners.slice(0, -1);
    const centre = start.map((_, k) => others.reduce((sum, { x }) => sum + x[k]!, 0) / others.length);
    const along = (share: number) => corner(centre.map((c, k) => c + share * (worst.x[k]! - c)));
    const mirrored = along(-1);
    if (mirrored.value < best.value) {
      const further = along(-2);
      corners[corners.length - 1] = further.value < mirrored.value ? further : mirrored;
    } else if (mirrored.value < second.value) {
      corners[corners.length - 1] = mirrored;
    } else {
      const nearer = along(mirrored.value < worst.value ? -0.5 : 0.5);
      if (nearer.value < Math.min(worst.value, mirrored.value)) corners[corners.length - 1] = nearer;
      else
        for (let i = 1; i < corners.length; i++)
          corners[i] = corner(corners[i]!.x.map((value, k) => (value + best.x[k]!) / 2));
    }
  }
  return corners.sort((a, b) => a.value - b.value)[0]!.x;
}
