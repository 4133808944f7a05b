/**
 * What a lifter can push: `F(s, v, t) = S g(s) r(v) a(t)`, with s over the lifter's full competition range.
 *
 *   ln g(s) = slope s + curvature s^2 - depth (exp(-((s - at)/width)^2) - exp(-(at/width)^2))
 *   r(v) = 1 - v / maxSpeed
 *   a(t) = (1 + rebound exp(-t / reboundTime)) (t > strainAfter ? exp(-(t - strainAfter) / strainTime) : 1)
 */
export interface Capability {
  /** Force that can just be held at s = 0 (N). */
  strengthN: number;
  slope: number;
  curvature: number;
  dip: { depth: number; at: number; width: number };
  maxSpeedMps: number;
  rebound: number;
  reboundTimeS: number;
  strainAfterS: number;
  strainTimeS: number;
  /** Share of the body that rises with the bar (phi times body mass). */
  movedBodyKg: number;
  range: { fromM: number; toM: number };
}
