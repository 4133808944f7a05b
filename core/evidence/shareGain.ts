import { contrast, type Effect } from './contrast.ts';
import { fitMixed } from './fitMixed.ts';

/** The block of training between two meets. */
export interface ShareRow {
  lifterId: string;
  /** Mean share of the load that was bands, 0 to 1, over the block's hard sets. */
  bandShare: number;
  /** Gain on the platform as a share of the lift before. */
  platformGain: number;
  years: number;
}

/** Change of the platform gain with the band share: 0.1 means a gain greater by 1 % of the lift for 10 points of share. */
export interface ShareGain {
  lifters: number;
  observations: number;
  effect: Effect;
  byLifter: { lifterId: string; observations: number; effect: Effect }[];
}

const LEAST_LIFTERS = 3;
const LEAST_BLOCKS = 8;
/** Blocks must differ by more than this in their share (standard deviation) to tell anything. */
const LEAST_SPREAD = 0.01;

/**
 * `platformGain = a + b share + c years`, level and slope varying from lifter to lifter. The share is counted from its
 * mean, and so is the length of the block. Null where there are too few blocks or all had the same share.
 */
export function shareGain(rows: readonly ShareRow[]): ShareGain | null {
  const lifters = new Set(rows.map(({ lifterId }) => lifterId)).size;
  if (lifters < LEAST_LIFTERS || rows.length < LEAST_BLOCKS) return null;
  const shares = centred(rows.map(({ bandShare }) => bandShare));
  const years = centred(rows.map(({ years }) => years));
  if (rootMeanSquare(shares) < LEAST_SPREAD) return null;
  const withLength = rootMeanSquare(years) > 1e-6;
  const fit = fitMixed({
    values: rows.map(({ platformGain }) => platformGain),
    fixed: shares.map((share, i) => (withLength ? [1, share, years[i]!] : [1, share])),
    random: shares.map((share) => [1, share]),
    groups: rows.map(({ lifterId }) => lifterId),
    method: 'reml',
  });
  const weights = withLength ? [0, 1, 0] : [0, 1];
  return {
    lifters,
    observations: rows.length,
    effect: contrast(fit, weights),
    byLifter: fit.groups.map((group) => ({
      lifterId: group.name,
      observations: group.observations,
      effect: contrast(fit, weights, { group, ofGroup: [0, 1] }),
    })),
  };
}

function centred(values: readonly number[]): number[] {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - mean);
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);
}
