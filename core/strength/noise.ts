/** How far what is written down stands from what the model gives. All assumptions, near the published spreads where named. */

/** Standard deviation of ln strength from set to set within a day: technique, position. */
export const SET_SD_LN = 0.012;
/** Share of entries with a slip of the pen or a short lockout: the mass is off by such a standard deviation of its ln. */
export const SLIP_SHARE = 0.02;
export const SLIP_SD_LN = 0.12;
/** Share of entries that tell nothing at all: pounds for kilograms, another lifter's set. */
export const WILD_SHARE = 0.003;
/** Luck of an entry that tells something: one of these normals, by their shares. */
export const ENTRIES = [
  { share: 1 - SLIP_SHARE - WILD_SHARE, sdLn: SET_SD_LN },
  { share: SLIP_SHARE, sdLn: SLIP_SD_LN },
] as const;
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

/** Place of a miss: half of them lie outside the sticking region (van den Tillaar & Ettema 2009). */
export const STOP_SD_S = 0.15;
/** Degrees of freedom of the errors: Student's t, so that a single wild reading cannot pull much. */
export const TAIL = 4;

/** Share of days that went wrong. */
const BAD_DAY_SHARE = 0.06;
/** A day's form about the average: one of these normals, by their shares; in standard deviations of a lifter's usual days. */
export const USUAL_DAY = { share: 1 - BAD_DAY_SHARE, mean: 0, sd: 1 } as const;
export const BAD_DAY = { share: BAD_DAY_SHARE, mean: -1.5, sd: 2 } as const;
export const DAY_FORMS = [USUAL_DAY, BAD_DAY] as const;
