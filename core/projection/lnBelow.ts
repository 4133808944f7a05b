const HALVINGS = 34;

/** ln mass below which a maximum lies with a probability, by halving; `chanceOfLn`, that it is at least so much, falls from one to nought between the bounds. */
export function lnBelow(
  probability: number,
  chanceOfLn: (lnTotal: number) => number,
  bounds: { from: number; to: number },
): number {
  let { from: low, to: high } = bounds;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (1 - chanceOfLn(middle) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
