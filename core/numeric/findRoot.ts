/**
 * A root of `f` between `a` and `b`, whose values `fa` and `fb` differ in sign, to `tolerance` in x: false
 * position with the Illinois weight, and a halving wherever three steps have not halved the bracket (general
 * numerical practice). Returns the last bracket, so that a caller can stay on the side it needs.
 */
export function findRoot(
  f: (x: number) => number,
  a: number,
  fa: number,
  b: number,
  fb: number,
  tolerance: number,
): { a: number; b: number } {
  if (fa > 0 === fb > 0) throw new RangeError(`no change of sign between ${a} and ${b}`);
  let widthBefore = Math.abs(b - a);
  for (let step = 1; Math.abs(b - a) > tolerance; step++) {
    const halve = step % 3 === 0 && Math.abs(b - a) > widthBefore / 2;
    if (step % 3 === 0) widthBefore = Math.abs(b - a);
    const width = b - a;
    // Stay half a tolerance inside the bracket: then a close guess also pulls in the far end.
    const margin = Math.sign(width) * Math.min(tolerance / 2, Math.abs(width) / 2);
    const guess = halve ? a + width / 2 : a - (fa * width) / (fb - fa);
    const x = width > 0 ? clamp(guess, a + margin, b - margin) : clamp(guess, b - margin, a + margin);
    const fx = f(x);
    if (fx > 0 === fb > 0) {
      b = x;
      fb = fx;
      fa /= 2;
    } else {
      a = x;
      fa = fx;
      fb /= 2;
    }
  }
  return { a, b };
}

function clamp(x: number, low: number, high: number): number {
  return Math.min(Math.max(x, low), high);
}
