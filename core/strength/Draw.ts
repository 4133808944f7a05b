/**
 * One of many equally likely answers to 'what can this lifter do on an average rested day': the strength and the shape
 * parameters of the model, all at once. Any question about the lifter is answered by asking every draw.
 */
export interface Draw {
  /** ln of the greatest total mass (bar and moved body, kg) from the competition start, raw. */
  lnTotal: number;
  /** ln of the top speed over the population's. */
  lnMaxSpeed: number;
  /** Added to the population's slope of ln g(s). */
  slope: number;
  /** ln of the rebound from a free start over the population's. */
  lnRebound: number;
  /** Logit of the share of the rebound left from a box, boards or a pause, less the population's. */
  heldRebound: number;
  /** ln of tiring over the population's. */
  lnTiring: number;
  /** Error of the band's part: ln of equivalent straight mass per share of the mean load that bands carry. */
  bandError: number;
  /** ln of strength in each supportive equipment over raw. */
  wraps: number;
  singlePly: number;
  multiPly: number;
  /** Standard deviation of ln strength from day to day. */
  daySd: number;
  /** Standard deviation of the change of ln strength in a week. */
  weekSd: number;
}
