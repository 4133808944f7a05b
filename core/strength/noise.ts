/** How far what is written down stands from what the model gives. All assumptions, near the published spreads where named. */

/** Standard deviation of ln strength from set to set within a day: technique, position. */
export const SET_SD_LN = 0.012;
/** Share of entries with a slip of the pen or a short lockout: the mass is off by such a standard deviation of its ln. */
export const SLIP_SHARE = 0.02;
export const SLIP_SD_LN = 0.12;
/** Share of entries that tell nothing at all: pounds for kilograms, another lifter's set. */
export const WILD_SHARE = 0.003;
/** Bar speed: one set's own error, and the error shared by alike sets of a day (device, intent); m/s. */
const SPEED_SD_MPS = 0.03;
const SHARED_SPEED_SD_MPS = 0.025;
/** Standard deviation of the mean speed of `count` alike sets of a day. */
export function speedSdMps(count: number): number {
  return Math.sqrt(SPEED_SD_MPS ** 2 / count + SHARED_SPEED_SD_MPS ** 2);
}
/** Peak speed is read with twice the error (Sanchez-Medina et al. 2017: 0.14 against 0.06 m/s). */
export const PEAK_FACTOR = 2;
/** Last rep's speed depends on tiring too, which the model knows only roughly: more error of its own. */
export const LAST_FACTOR = 1.5;
/**
 * Reps in reserve: lifters say about one rep too few (Halperin et al. 2022: 0.95, 0.17 to 1.73; experienced ones near
 * failure less), and scatter more the more they have left.
 */
export const RESERVE_UNSAID_REPS = 0.4;
export const RESERVE_SD_REPS = 0.7;
export const RESERVE_SD_PER_REP = 0.2;
/** Standard deviation of the mean of `count` answers when `left` reps are truly left. */
export function reserveSd(left: number, count: number): number {
  return oneReserveSd(left) / Math.sqrt(count);
}
/** The same of a single answer. */
export function oneReserveSd(left: number): number {
  return RESERVE_SD_REPS + RESERVE_SD_PER_REP * Math.max(0, left);
}

/** Place of a miss: half of them lie outside the sticking region (van den Tillaar & Ettema 2009). */
export const STOP_SD_S = 0.15;
/** Degrees of freedom of the errors: Student's t, so that a single wild reading cannot pull much. */
export const TAIL = 4;
/** Share of days that went wrong, how far they lie below (in day standard deviations), and how much wider they scatter. */
export const BAD_DAY_SHARE = 0.06;
export const BAD_DAY_BELOW = 1.5;
export const BAD_DAY_FACTOR = 2;
