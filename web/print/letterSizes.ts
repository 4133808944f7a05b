import type { CSSProperties } from 'react';

/**
 * How small letters on paper may be. This is the one place that says so: style sheets take it from here, a walk measures the
 * printed page by it, and what finds no room at these sizes goes to a further page.
 *
 * Height of figures that are read at a distance D: 0.0022 D + 1.5 mm, and 1.9 mm more where an error would be grave, by Peters and
 * Adams (Three criteria for readable panel markings, Product Engineering 1959), as handbooks of human factors have it; in their
 * inches 0.0022 D + 0.06 + 0.075, for good light. From memory.
 */
export function figureHeightMm(distanceMm: number, isGrave: boolean): number {
  return 0.0022 * distanceMm + 0.06 * mmPerInch + (isGrave ? 0.075 * mmPerInch : 0);
}

const mmPerInch = 25.4;

/** The loader stands at the bar, the sheet hangs on the wall. */
export const wallDistanceMm = 3000;

/** What a lifter or a loader reads with the sheet before him: at 11 pt figures are 2.7 mm high, which by the formula above do for half a metre. */
export const leastReadPt = 11;

/** Fine print, of class `fine`: where figures come from, what they are, when they were worked out. Common practice, no source. */
export const leastFinePt = 8;

/** The weight of the bar: a letter of a two-hundredth of the distance, common practice for signs, and more than the formula asks. */
export const barFigureMm = wallDistanceMm / 200;

/** The discs of a side: by the formula, for a wrong disc is grave. */
export const discFigureMm = figureHeightMm(wallDistanceMm, true);

/** Lines to write on with a pen: 9/32 of an inch, as exercise books are ruled. Common practice, no source; from memory. */
export const leastPenMm = (9 / 32) * mmPerInch;

/** Height of Archivo's figures as a share of the letter size. */
export const figureShare = 0.686;

/** The sizes as the style sheets of paper call them. */
export const letterSizes = {
  '--read': `${leastReadPt}pt`,
  '--fine': `${leastFinePt}pt`,
  '--bar': `${barFigureMm / figureShare}mm`,
  '--pen': `${leastPenMm}mm`,
  '--discs': `${discFigureMm / figureShare}mm`,
} as CSSProperties;
