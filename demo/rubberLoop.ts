/**
 * Tension of one loop of the invented club's rubber, so that its readings look like readings.
 *
 *   F = 2 width thickness level sigma(L / L0), two legs a loop
 *
 * `sigma` is measured nominal stress of an unfilled isoprene rubber (Kawabata, Matsuda, Tei & Kawai 1981,
 * Macromolecules 14:154-162, uniaxial points), interpolated as sigma / (lambda - lambda^-2) against 1 / lambda,
 * where rubber is nearly a straight line. It is laboratory data and none of the forms that the program fits.
 * Thickness 4.5 mm: common practice, no source. Lengths in m, width in mm, result in N, 0 when slack.
 */
export interface RubberLoop {
  widthMm: number;
  restLengthM: number;
  /** This loop's stiffness against the laboratory's rubber; 1 is equal. */
  level: number;
}

const THICKNESS_MM = 4.5;

/** Stretch ratio, nominal stress in MPa (N per square mm of one leg at rest). */
const KAWABATA_1981: readonly (readonly [number, number])[] = [
  [1.04, 0.0434],
  [1.1, 0.1064],
  [1.16, 0.1617],
  [1.2, 0.196],
  [1.24, 0.2272],
  [1.3, 0.27],
  [1.6, 0.433],
  [1.9, 0.553],
  [2.2, 0.651],
  [2.5, 0.74],
  [2.8, 0.827],
  [3.1, 0.919],
  [3.4, 1.016],
];

export function rubberLoopN(loop: RubberLoop, lengthM: number): number {
  const stretch = lengthM / loop.restLengthM;
  if (stretch <= 1) return 0;
  const stressMPa = reducedStress(stretch) * strainFactor(stretch);
  return 2 * loop.widthMm * THICKNESS_MM * loop.level * stressMPa;
}

function strainFactor(stretch: number): number {
  return stretch - stretch ** -2;
}

function reducedStress(stretch: number): number {
  const above = KAWABATA_1981.findIndex(([at]) => at >= stretch);
  const right = above === -1 ? KAWABATA_1981.length - 1 : Math.max(above, 1);
  const [x0, y0] = mooneyPoint(right - 1);
  const [x1, y1] = mooneyPoint(right);
  return y0 + ((y1 - y0) * (1 / stretch - x0)) / (x1 - x0);
}

function mooneyPoint(index: number): readonly [number, number] {
  const [stretch, stressMPa] = KAWABATA_1981[index]!;
  return [1 / stretch, stressMPa / strainFactor(stretch)];
}
