import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { curveOf } from '#core/load/loadCurve.ts';
import { onceFor } from '#core/numeric/onceFor.ts';
import type { Newton } from '#core/numeric/quantity.ts';
import type { PairHookup, RackGear } from './Gear.ts';
import { exactHeights, type HeightSpread, heightEffectN } from './heightSpread.ts';

/** Where and how far one lifter moves the bar in this lift and start. */
export type Travel = Pick<Load, 'bottomM' | 'lockoutM' | 'gravityMps2' | 'path'>;

/** Shares of the lift's own range that a prescription is judged on: its steep last part is reported, not chased. */
export const rangeThatMatters: readonly number[] = Array.from({ length: 18 }, (_, i) => i * 0.05);

/** Vertical force (N) over one lifter's travel; those of several pieces of gear add up. */
export interface GearPull {
  /** At the heights of `rangeThatMatters`. */
  gridN: readonly number[];
  bottomN: Newton;
  lockoutN: Newton;
  meanN: Newton;
}

/** What one piece of gear pulls, and how well that is known. */
export interface GearPiece {
  pull: GearPull;
  /** Of the pull, bands alone; a chain has none. */
  band: GearPull;
  /** Standard deviation from the curve of its bands or its readings; those of several pieces are independent. */
  sd: GearPull;
  /** What one standard deviation of the lifter's heights adds to the pull, with its sign; alike for all pieces. */
  byHeight: GearPull;
}

/** Height of a share of the lift's own range. */
export function heightAt({ bottomM, lockoutM }: Travel, s: number): number {
  return bottomM + s * (lockoutM - bottomM);
}

/** The pair as part of a load: by its scale readings where there are any, else by geometry. */
export function pairOnBar({ rigged, measured }: PairHookup): Pick<Load, 'bands' | 'hungBands'> {
  return measured === null ? { bands: rigged, hungBands: [] } : { bands: [], hungBands: [measured] };
}

/** What each hookup, and one pair of each chain kind, pulls over this travel. */
export function gearPieces(gear: RackGear, travel: Travel, heights: HeightSpread = exactHeights): GearPieces {
  return piecesOnce(gear, travel, heights);
}

interface GearPieces {
  hookups: GearPiece[];
  chains: GearPiece[];
}

/** A lifter's sets are ranked under the bounds, and again without them to tell what these hold back. */
const piecesOnce = onceFor((gear: RackGear, travel: Travel, heights: HeightSpread): GearPieces => {
  const bare: Load = { ...travel, barKg: 0, bands: [], hungBands: [], chains: [] };
  return {
    hookups: gear.hookups.map((hookup) => pieceOf({ ...bare, ...pairOnBar(hookup) }, heights)),
    chains: gear.chains.map(({ chain }) => pieceOf({ ...bare, chains: [chain] }, heights)),
  };
});

function pieceOf(load: Load, heights: HeightSpread): GearPiece {
  const compiled = compileLoad(load);
  const { bottomM, lockoutM } = load;
  const sampled = (f: (zM: number) => number): GearPull => {
    const gridN = rangeThatMatters.map((s) => f(heightAt(load, s)));
    const meanN = gridN.reduce((sum, forceN) => sum + forceN, 0) / gridN.length;
    return { gridN, bottomN: f(bottomM), lockoutN: f(lockoutM), meanN };
  };
  const pull = { ...sampled(compiled.totalN), meanN: curveOf(compiled, 2).meanN };
  return {
    pull,
    band: load.chains.length > 0 ? sampled(() => 0) : pull,
    sd: sampled(compiled.bandSdN),
    byHeight: sampled((zM) =>
      heightEffectN(heights, (zM - bottomM) / (lockoutM - bottomM), zM, compiled.totalN),
    ),
  };
}
