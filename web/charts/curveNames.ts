/** A place in the drawing (px, y downwards). */
export type Place = readonly [x: number, y: number];

/** A word's right end and its base line (px). */
export interface NamePlace {
  name: string;
  x: number;
  y: number;
}

/** As wide as a letter of the drawings mostly is, as high as a line, and what stays free between curve and word: room for a ringed reading. */
export const LETTER_PX = 7;
const LINE_PX = 16;
const FREE_PX = 16;

/**
 * Where the names of curves stand that are drawn beside fitted ones, so that no word crosses a curve or another word: at the end
 * of its curve, those that end above the first fitted curve over all of them, the others under all of them. Curves rise to
 * the right and are given from left to right.
 */
export function curveNames(
  fitted: readonly (readonly Place[])[],
  others: readonly { name: string; places: readonly Place[] }[],
): NamePlace[] {
  const named = others.filter(({ places }) => places.length > 0);
  const [main] = fitted;
  const curves = [...fitted, ...named.map(({ places }) => places)];
  const endOf = ({ places }: (typeof named)[number]) => places.at(-1)!;
  const isAbove = (one: (typeof named)[number]) => {
    const [x, y] = endOf(one);
    return main === undefined || y <= heightAt(main, x);
  };
  const byHeight = named.toSorted((a, b) => endOf(a)[1] - endOf(b)[1]);
  // From the main curve outwards, each beyond the one before.
  let top = Number.POSITIVE_INFINITY;
  const above = byHeight
    .filter(isAbove)
    .toReversed()
    .map((one): NamePlace => {
      const [x] = endOf(one);
      top = Math.min(top - LINE_PX, ...curves.map((places) => heightAt(places, x) - FREE_PX));
      return { name: one.name, x: x - 4, y: top };
    });
  let foot = Number.NEGATIVE_INFINITY;
  const below = byHeight
    .filter((one) => !isAbove(one))
    .map((one): NamePlace => {
      const x = endOf(one)[0] - 4;
      const left = x - LETTER_PX * one.name.length;
      foot = Math.max(
        foot + LINE_PX,
        ...curves.map((places) => heightAt(places, left) + FREE_PX + LINE_PX / 2),
      );
      return { name: one.name, x, y: foot };
    });
  return [...above, ...below];
}

/** A curve's height at `x`, straight between its places and held beyond them. */
function heightAt(places: readonly Place[], x: number): number {
  const next = places.findIndex((place) => place[0] >= x);
  if (next < 0) return places.at(-1)![1];
  if (next === 0) return places[0]![1];
  const [[x0, y0], [x1, y1]] = [places[next - 1]!, places[next]!];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
