import { compileLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { curveOf } from '#core/load/loadCurve.ts';
import type { PairHookup, RackGear } from './Gear.ts';

/** Where and how far one lifter moves the bar in this lift and start. */
export type Travel = Pick<Load, 'bottomM' | 'lockoutM' | 'gravityMps2' | 'path'>;

/** Shares of the lift's own range that a prescription is judged on: its steep last part is reported, not chased. */
export const rangeThatMatters: readonly number[] = Array.from({ length: 18 }, (_, i) => i * 0.05);

/** Vertical pull (N) of one piece of gear over one lifter's travel; pulls of several pieces add up. */
export interface GearPull {
  /** At the heights of `rangeThatMatters`. */
  gridN: readonly number[];
  bottomN: number;
  lockoutN: number;
  meanN: number;
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
export function gearPulls(gear: RackGear, travel: Travel): { hookups: GearPull[]; chains: GearPull[] } {
  const bare: Load = { ...travel, barKg: 0, bands: [], hungBands: [], chains: [] };
  return {
    hookups: gear.hookups.map((hookup) => pullOf({ ...bare, ...pairOnBar(hookup) })),
    chains: gear.chains.map(({ chain }) => pullOf({ ...bare, chains: [chain] })),
  };
}

function pullOf(load: Load): GearPull {
  const compiled = compileLoad(load);
  const { bottomN, lockoutN, meanN } = curveOf(compiled, 2);
  return {
    gridN: rangeThatMatters.map((s) => compiled.at(heightAt(load, s)).totalN),
    bottomN,
    lockoutN,
    meanN,
  };
}
