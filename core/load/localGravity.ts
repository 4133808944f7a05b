/** Standard gravity (m/s2), 3rd CGPM 1901. */
export const STANDARD_GRAVITY_MPS2 = 9.80665;

/**
 * Normal gravity (m/s2) at a latitude (degrees, -90 to 90) and a height above the sea (m), WGS 84.
 *
 *   g0 = ge (1 + k sin^2) / sqrt(1 - e^2 sin^2)
 *   g  = g0 (1 - (2/a) (1 + f + m - 2 f sin^2) h + 3 h^2 / a^2)
 *
 * NIMA TR8350.2 (2000), chapter 4. The height above the ellipsoid is taken as that above the sea: they differ by up
 * to 100 m, or 3e-5 of g, about what the ground below adds or takes.
 */
export function localGravity(latitudeDeg: number, heightAboveSeaM: number): number {
  const sin2 = Math.sin((latitudeDeg * Math.PI) / 180) ** 2;
  const ground = (EQUATOR_MPS2 * (1 + K * sin2)) / Math.sqrt(1 - E2 * sin2);
  const h = heightAboveSeaM / SEMI_MAJOR_M;
  return ground * (1 - 2 * (1 + FLATTENING + M - 2 * FLATTENING * sin2) * h + 3 * h ** 2);
}

const EQUATOR_MPS2 = 9.7803253359;
const K = 0.00193185265241;
const E2 = 0.00669437999014;
const SEMI_MAJOR_M = 6_378_137;
const FLATTENING = 1 / 298.257223563;
/** Centrifugal over gravitational pull at the equator. */
const M = 0.00344978650684;
