import type { Kg, Newton, Share } from '../numeric/quantity.ts';
/**
 * What a lifter can push: `F(s, v, t) = S g(s) r(v) a(t)`, with s over the lifter's full competition range, and what
 * of it the lifter does push against a load L, body included, with the bar `d` below lockout (model, "rep"):
 *
 *   push = L + b(t) (F - L) - easing M r^2 / (L / M),   r = v^2 / (2 d)
 *   b(t) = 1 - (1 - builtShare) exp(-t / buildUpTime)
 *
 * `r` is the braking that would bring the bar to rest just at lockout, `L / M` what the load alone gives.
 *
 *   ln g(s) = slope s + curvature s^2 - depth (exp(-((s - at)/width)^2) - exp(-(at/width)^2))
 *   r(v) = 1 - v / maxSpeed
 *   a(t) = (1 + rebound exp(-t / reboundTime)) (t > strainAfter ? exp(-(t - strainAfter) / strainTime) : 1)
 */
export interface Capability {
  /** Force that can just be held at s = 0 (N). */
  strengthN: Newton;
  slope: number;
  curvature: number;
  dip: { depth: number; at: number; width: number };
  maxSpeedMps: number;
  rebound: number;
  reboundTimeS: number;
  strainAfterS: number;
  strainTimeS: number;
  /** Time constant with which the push builds up from what just holds the bar; 0: it is there at once. */
  buildUpTimeS: number;
  /** Share of the build-up that the stretch has done already when the bar starts up: 0 from a dead stop, 1 all of it. */
  builtShare: Share;
  /**
   * How the push eases off towards lockout, so that the bar arrives near rest: what is held back, as a multiple of the
   * braking that is needed, where the load gives just that much by itself. 0: nothing.
   */
  easing: number;
  /** Share of the body that rises with the bar (phi times body mass). */
  movedBodyKg: Kg;
  range: { fromM: number; toM: number };
}
