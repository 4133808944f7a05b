/** Gradient of f at x by central differences with the steps `h`. */
export function gradient(f: (x: number[]) => number, x: readonly number[], h: readonly number[]): number[] {
  return x.map((_, i) => (f(moved(x, [[i, h[i]!]])) - f(moved(x, [[i, -h[i]!]]))) / (2 * h[i]!));
}

/** Matrix of second derivatives of f at x by central differences with the steps `h`. */
export function hessian(f: (x: number[]) => number, x: readonly number[], h: readonly number[]): number[][] {
  const middle = f([...x]);
  const rows = x.map(() => x.map(() => 0));
  for (let i = 0; i < x.length; i++) {
    const hi = h[i]!;
    rows[i]![i] = (f(moved(x, [[i, hi]])) - 2 * middle + f(moved(x, [[i, -hi]]))) / hi ** 2;
    for (let j = 0; j < i; j++) {
      const hj = h[j]!;
      const corner = (a: number, b: number) =>
        f(
          moved(x, [
            [i, a],
            [j, b],
          ]),
        );
      const mixed = (corner(hi, hj) - corner(hi, -hj) - corner(-hi, hj) + corner(-hi, -hj)) / (4 * hi * hj);
      rows[i]![j] = mixed;
      rows[j]![i] = mixed;
    }
  }
  return rows;
}

function moved(x: readonly number[], steps: readonly (readonly [number, number])[]): number[] {
  const there = [...x];
  for (const [i, step] of steps) there[i]! += step;
  return there;
}
