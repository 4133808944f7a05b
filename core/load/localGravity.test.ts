import { describe, expect, it } from 'vitest';
import { bareLoad } from './bareLoad.ts';
import { loadCurve } from './loadCurve.ts';
import { localGravity } from './localGravity.ts';

// (0.30877 - 0.00045 sin^2) h - 0.000072 h^2, in Gal, h in km (Heiskanen & Moritz 1967, Physical Geodesy, 2-124, from
// memory), good to its last printed digit: 5 x 1e-5 Gal at 5 km.
const fallGal = (latitudeDeg: number, km: number) =>
  100 * (localGravity(latitudeDeg, 0) - localGravity(latitudeDeg, 1000 * km));

describe('local gravity', () => {
  it('is that of the ellipsoid at the equator and at the poles', () => {
    // NIMA TR8350.2 (2000), table 3.4: 9.7803253359 and 9.8321849378 m/s2.
    expect(localGravity(0, 0)).toBeCloseTo(9.7803253359, 10);
    expect(localGravity(90, 0)).toBeCloseTo(9.8321849378, 8);
    expect(localGravity(-90, 0)).toBe(localGravity(90, 0));
    // Between them Somigliana's formula for another ellipsoid of the same shape, GRS 80: 9.806199203 at 45 degrees against
    // 9.780326772 at the equator (Moritz 2000, J Geod 74:128, from memory); ratios agree to 1e-7.
    expect(localGravity(45, 0) / localGravity(0, 0)).toBeCloseTo(9.806199203 / 9.780326772, 7);
  });

  it('falls with the height as geodesy has it', () => {
    expect(fallGal(0, 5) - (0.30877 * 5 - 0.000072 * 25)).toBeCloseTo(0, 4);
    expect(fallGal(90, 5) - ((0.30877 - 0.00045) * 5 - 0.000072 * 25)).toBeCloseTo(0, 3);
  });

  it('makes 100 kg weigh 100 kgf where nobody says where the gym is', () => {
    // 1 kgf = 9.80665 N, 3rd CGPM 1901; 2204.62 lb are 1 t (NIST SP 811), so 220.462 lbf of 4.4482216 N.
    const { bottomN } = loadCurve({ ...bareLoad(0.9, 1.5), barKg: 100 }, 2);
    expect(bottomN).toBeCloseTo(220.46226 * 4.4482216152605, 3);
  });
});
