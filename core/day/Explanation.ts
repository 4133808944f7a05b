import type { Basis } from './Aim.ts';
import type { Caution } from './Caution.ts';

/** A vertical force at the bar (N) with its parts and its 95 % interval. */
export interface ExplainedForce {
  totalN: number;
  low95N: number;
  high95N: number;
  barN: number;
  bandN: number;
  chainN: number;
}

/** Why a setup is what it is for this lifter: everything that a coach may ask about one bar. */
export interface Explanation {
  barKg: number;
  bottom: ExplainedForce;
  mid: ExplainedForce;
  lockout: ExplainedForce;
  /** Over the whole range. */
  mean: ExplainedForce;
  /** Shares of the reference maximum, each on its own basis. */
  percentages: { basis: Basis; share: number; low95: number; high95: number }[];
  /** Load over what the lifter could just hold still there; `s` runs over this lift's own range. */
  shares: { s: number; zM: number; share: number }[];
  /** The first rep of a set; what tiredness does to later ones is not in it. */
  firstRep: {
    made: boolean;
    meanSpeedMps: number;
    peakSpeedMps: number;
    durationS: number;
    slowestS: number;
    slowestSpeedMps: number;
  };
  /** Fore-aft pull of the bands, + forward. */
  foreAft: { bottomN: number; lockoutN: number };
  /** The most that one anchor point carries on its side, all bands on it together. */
  anchors: { anchorId: string; pullN: number; ratedLoadN: number | null }[];
  slackBelowM: number | null;
  cautions: Caution[];
}
