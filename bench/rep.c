/*
 * The reference for bench/rep.ts: the scheme of core/rep/ascend.ts in plain C, for a lifter with a dip and a rebound whose
 * push builds up and eases, under a bar and two doubled neo-Hookean bands. Prints nanoseconds a rep and the rep's duration.
 * Build: cc -O2 rep.c -lm. Run: ./a.out BAR_KG REPS
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static const double G = 9.80665, BOTTOM = 0.95, LOCKOUT = 1.55, TOLERANCE = 1e-8;
static const double STRENGTH = 3242, SLOPE = 1.2, CURVATURE = -0.5, DEPTH = 0.2, AT = 0.4, WIDTH = 0.2, TOP_SPEED = 1.6;
static const double REBOUND = 0.35, REBOUND_TIME = 0.7, STRAIN_AFTER = 2.5, STRAIN_TIME = 6, BODY = 88;
static const double BUILD_UP_TIME = 0.08, BUILT_SHARE = 0.44, EASING = 1.4, LANDING = 0.002;
static const double ANCHOR_X = 0.05, ANCHOR_Z = 0.1, REST = 1.04, MU = 120;
static double bar_kg, at_start;

typedef struct { double t, z, v, a; } state;

static double band(double z) {
  double rise = z - ANCHOR_Z, length = sqrt(ANCHOR_X * ANCHOR_X + rise * rise), loop = 2 * length;
  if (loop <= REST) return 0;
  double lambda = loop / REST;
  return 2 * 2 * MU * (lambda - 1 / (lambda * lambda)) * rise / length;
}

static double acceleration(double t, double z, double v) {
  double s = (z - BOTTOM) / (LOCKOUT - BOTTOM), offset = (s - AT) / WIDTH;
  double held = STRENGTH * exp(SLOPE * s + CURVATURE * s * s - DEPTH * exp(-offset * offset) + at_start);
  double strain = 1 + REBOUND * exp(-t / REBOUND_TIME);
  if (t > STRAIN_AFTER) strain *= exp(-(t - STRAIN_AFTER) / STRAIN_TIME);
  double mass = bar_kg + BODY, braking = G + band(z) / mass;
  double built = t < 40 * BUILD_UP_TIME ? 1 - (1 - BUILT_SHARE) * exp(-t / BUILD_UP_TIME) : 1;
  double needed = v * v / (2 * (fmax(0, LOCKOUT - z) + LANDING));
  return built * (held * (1 - v / TOP_SPEED) * strain / mass - braking) - EASING * needed * needed / fmax(braking, 0.1 * G);
}

static double step(const state *from, double h, state *out) {
  double t = from->t, z = from->z, v = from->v, a = from->a;
  double v2 = v + h * a / 5, a2 = acceleration(t + h / 5, z + h * v / 5, v2);
  double v3 = v + h * (3.0 / 40 * a + 9.0 / 40 * a2);
  double a3 = acceleration(t + h * 0.3, z + h * (3.0 / 40 * v + 9.0 / 40 * v2), v3);
  double v4 = v + h * (44.0 / 45 * a - 56.0 / 15 * a2 + 32.0 / 9 * a3);
  double a4 = acceleration(t + h * 0.8, z + h * (44.0 / 45 * v - 56.0 / 15 * v2 + 32.0 / 9 * v3), v4);
  double v5 = v + h * (19372.0 / 6561 * a - 25360.0 / 2187 * a2 + 64448.0 / 6561 * a3 - 212.0 / 729 * a4);
  double a5 = acceleration(t + h * 8 / 9,
      z + h * (19372.0 / 6561 * v - 25360.0 / 2187 * v2 + 64448.0 / 6561 * v3 - 212.0 / 729 * v4), v5);
  double v6 = v + h * (9017.0 / 3168 * a - 355.0 / 33 * a2 + 46732.0 / 5247 * a3 + 49.0 / 176 * a4 - 5103.0 / 18656 * a5);
  double a6 = acceleration(t + h,
      z + h * (9017.0 / 3168 * v - 355.0 / 33 * v2 + 46732.0 / 5247 * v3 + 49.0 / 176 * v4 - 5103.0 / 18656 * v5), v6);
  out->t = t + h;
  out->v = v + h * (35.0 / 384 * a + 500.0 / 1113 * a3 + 125.0 / 192 * a4 - 2187.0 / 6784 * a5 + 11.0 / 84 * a6);
  out->z = z + h * (35.0 / 384 * v + 500.0 / 1113 * v3 + 125.0 / 192 * v4 - 2187.0 / 6784 * v5 + 11.0 / 84 * v6);
  out->a = acceleration(out->t, out->z, out->v);
  double ev = h * (71.0 / 57600 * a - 71.0 / 16695 * a3 + 71.0 / 1920 * a4 - 17253.0 / 339200 * a5 + 22.0 / 525 * a6 - out->a / 40);
  double ez = h * (71.0 / 57600 * v - 71.0 / 16695 * v3 + 71.0 / 1920 * v4 - 17253.0 / 339200 * v5 + 22.0 / 525 * v6 - out->v / 40);
  return fmax(fabs(ez), fabs(ev)) / TOLERANCE;
}

/* Which quantity a step is to end on: the turn of the speed, standstill or lockout. */
enum landing { PEAK, TROUGH, STANDSTILL, TOP };

static void land(const state *from, double size, state *out, enum landing on, double rate) {
  double low = 0, high = size;
  for (int i = 0; i < 12; i++) {
    double off, slope;
    if (on == PEAK) off = -out->a, slope = -rate;
    else if (on == TROUGH) off = out->a, slope = rate;
    else if (on == STANDSTILL) off = -out->v, slope = -out->a;
    else off = out->z - LOCKOUT, slope = out->v;
    double newton = size - off / slope;
    if (fabs(newton - size) <= 1e-15 * (1 + from->t)) return;
    if (off > 0) high = size; else low = size;
    size = newton > low && newton < high ? newton : (low + high) / 2;
    step(from, size, out);
  }
}

static double rep(void) {
  state now = {0, BOTTOM, 0, 0}, out;
  now.a = acceleration(0, BOTTOM, 0);
  double h = 1e-2;
  while (now.t < 120) {
    int before_strain = now.t < STRAIN_AFTER && now.t + h > STRAIN_AFTER;
    double size = before_strain ? STRAIN_AFTER - now.t : h, error = step(&now, size, &out);
    if (!(error <= 1)) { h = size * fmax(0.2, 0.8 * pow(error, -0.2)); continue; }
    int landed = before_strain, ended = 0;
    if ((now.a > 0) != (out.a > 0) && now.t > 0 && out.z < LOCKOUT) {
      int rising = now.a > 0;
      land(&now, size, &out, rising ? PEAK : TROUGH, (out.a - now.a) / size);
      out.a = rising ? fmin(out.a, -1e-300) : fmax(out.a, 1e-300);
      landed = 1;
    }
    if (out.v <= 0) land(&now, out.t - now.t, &out, STANDSTILL, 0), ended = 1;
    if (out.z >= LOCKOUT) land(&now, out.t - now.t, &out, TOP, 0), ended = 1;
    if (!landed) h = size * fmin(5, fmax(0.2, error > 0 ? 0.8 * pow(error, -0.2) : 5));
    now = out;
    if (ended) break;
  }
  return now.t;
}

int main(int argc, char **argv) {
  if (argc != 3) return 2;
  bar_kg = atof(argv[1]);
  int reps = atoi(argv[2]);
  at_start = DEPTH * exp(-(AT / WIDTH) * (AT / WIDTH));
  double sum = 0;
  struct timespec from, to;
  clock_gettime(CLOCK_MONOTONIC, &from);
  for (int i = 0; i < reps; i++) sum += rep();
  clock_gettime(CLOCK_MONOTONIC, &to);
  double ns = (to.tv_sec - from.tv_sec) * 1e9 + (to.tv_nsec - from.tv_nsec);
  printf("%.1f %.12f\n", ns / reps, sum / reps);
  return 0;
}
