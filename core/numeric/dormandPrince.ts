/** Acceleration (m/s^2) at time `t`, position `z`, speed `v`. */
export type Acceleration = (t: number, z: number, v: number) => number;

/** A state of straight-line motion with its acceleration. */
export interface MotionState {
  t: number;
  z: number;
  v: number;
  a: number;
}

/**
 * One step of the Dormand-Prince 5(4) pair for `z' = v, v' = a(t, z, v)` (Dormand & Prince 1980, J Comput Appl
 * Math 6:19-26, table 2). Writes the fifth-order result into `out` and returns the larger of its two embedded errors, of
 * position and of speed.
 */
export function dormandPrinceStep(f: Acceleration, from: MotionState, h: number, out: MotionState): number {
  const { t, z, v, a } = from;
  const v2 = v + h * (1 / 5) * a;
  const a2 = f(t + h / 5, z + h * (1 / 5) * v, v2);
  const v3 = v + h * ((3 / 40) * a + (9 / 40) * a2);
  const a3 = f(t + h * 0.3, z + h * ((3 / 40) * v + (9 / 40) * v2), v3);
  const v4 = v + h * ((44 / 45) * a - (56 / 15) * a2 + (32 / 9) * a3);
  const a4 = f(t + h * 0.8, z + h * ((44 / 45) * v - (56 / 15) * v2 + (32 / 9) * v3), v4);
  const v5 = v + h * ((19372 / 6561) * a - (25360 / 2187) * a2 + (64448 / 6561) * a3 - (212 / 729) * a4);
  const a5 = f(
    t + h * (8 / 9),
    z + h * ((19372 / 6561) * v - (25360 / 2187) * v2 + (64448 / 6561) * v3 - (212 / 729) * v4),
    v5,
  );
  const v6 =
    v +
    h * ((9017 / 3168) * a - (355 / 33) * a2 + (46732 / 5247) * a3 + (49 / 176) * a4 - (5103 / 18656) * a5);
  const a6 = f(
    t + h,
    z +
      h * ((9017 / 3168) * v - (355 / 33) * v2 + (46732 / 5247) * v3 + (49 / 176) * v4 - (5103 / 18656) * v5),
    v6,
  );
  out.t = t + h;
  out.v =
    v + h * ((35 / 384) * a + (500 / 1113) * a3 + (125 / 192) * a4 - (2187 / 6784) * a5 + (11 / 84) * a6);
  out.z =
    z + h * ((35 / 384) * v + (500 / 1113) * v3 + (125 / 192) * v4 - (2187 / 6784) * v5 + (11 / 84) * v6);
  out.a = f(out.t, out.z, out.v);
  const errorV =
    h *
    ((71 / 57600) * a -
      (71 / 16695) * a3 +
      (71 / 1920) * a4 -
      (17253 / 339200) * a5 +
      (22 / 525) * a6 -
      out.a / 40);
  const errorZ =
    h *
    ((71 / 57600) * v -
      (71 / 16695) * v3 +
      (71 / 1920) * v4 -
      (17253 / 339200) * v5 +
      (22 / 525) * v6 -
      out.v / 40);
  return Math.max(Math.abs(errorZ), Math.abs(errorV));
}
