import { type Parameters, WEEK_SD } from './parameters.ts';

/**
 * Without training strength is kept for about three weeks (McMaster et al. 2013, Sports Med 43:367) and falls the more the longer it
 * lasts (Bosquet et al. 2013, Scand J Med Sci Sports 23:e140: maximal force 0.46 of a standard deviation over all pauses). How
 * far it falls in the end, how soon and how differently people lose it are judgements near those figures.
 */
const KEPT_WEEKS = 3;
const MOST_LOST_LN = 0.16;
const LOST_WEEKS = 20;
const LOST_SD_SHARE = 0.5;

/** How ln strength changes in the mean, and with which standard deviation, over so many weeks without a set. */
export function changeOver(
  weeks: number,
  { weekGain, lnWeekSd }: Pick<Parameters, 'weekGain' | 'lnWeekSd'>,
): { meanLn: number; sdLn: number } {
  const idle = Math.max(0, weeks - KEPT_WEEKS);
  const lostLn = MOST_LOST_LN * (1 - Math.exp(-idle / LOST_WEEKS));
  return {
    meanLn: trainedWeeks(weeks) * weekGain - lostLn,
    sdLn: Math.hypot(WEEK_SD * Math.exp(lnWeekSd) * Math.sqrt(weeks), LOST_SD_SHARE * lostLn),
  };
}

/** Weeks of a gap over which strength may have gone on to grow. */
export function trainedWeeks(weeks: number): number {
  return Math.min(weeks, KEPT_WEEKS);
}

/**
 * Beside that strength may fall abruptly. One to four injuries come in a thousand hours of training (Aasa et al. 2017, Br J Sports Med
 * 51:211), at five hours a week up to one a year, and two to four colds in a year (Heikkinen & Jarvinen 2003, Lancet 361:51), both from
 * memory; people lose body mass and sleep too. Half of the most that injuries and colds come to is taken to cost strength that does not
 * come back within days (judgement). How far it falls is a judgement as well: by `LEAST_FALL_LN`, for less is what weeks do anyhow, and an
 * exponentially distributed part of `FURTHER_FALL_LN` in the mean.
 */
const FALLS_A_WEEK = 0.05;
export const LEAST_FALL_LN = 0.04;
export const FURTHER_FALL_LN = 0.06;
/** A fall often takes more than one day to be complete: in the weeks after one, others are this frequent (judgement). */
const FURTHER_FALLS_A_WEEK = 0.25;
const SHAKEN_WEEKS = 2;

/** Whether strength has lately fallen, as a probability, so many weeks later. */
export function stillShaken(shaken: number, weeks: number): number {
  return shaken * Math.exp(-weeks / SHAKEN_WEEKS);
}

/** Chance of a fall within so many weeks, `shaken` at their end. Of a long pause only the first weeks count: the rest is detraining. */
export function fallChance(weeks: number, shaken: number): number {
  return 1 - Math.exp(-trainedWeeks(weeks) * (FALLS_A_WEEK + shaken * FURTHER_FALLS_A_WEEK));
}
