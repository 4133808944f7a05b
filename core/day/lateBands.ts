import { compileLoad } from '#core/load/compileLoad.ts';
import type { GearSet, PairHookup, RackGear } from './Gear.ts';
import { heightAt, pairOnBar, rangeThatMatters, type Travel } from './gearPull.ts';
import type { LifterTask } from './misfit.ts';
import type { SearchRules } from './SearchRules.ts';

/** Work (N m) of a pair's pull over the way, up or down: all of it, and that above the range that matters. */
export interface PairWork {
  allNm: number;
  lateNm: number;
}

/**
 * Tells the sets whose bands do most of their work where the aim does not look. Shares of capability and speeds are judged up to the
 * end of the range that matters, and what bands do above it is told but not judged. Percentages name the heights that they
 * look at themselves.
 */
export function lateBands(
  { hookups }: Pick<RackGear, 'hookups'>,
  { aim, travel }: Pick<LifterTask, 'aim' | 'travel'>,
  { mostLateShare }: Pick<SearchRules, 'mostLateShare'>,
): (set: Pick<GearSet, 'hookups'>) => boolean {
  if (aim.by === 'percent' || mostLateShare >= 1) return () => false;
  const works = hookups.map((hookup) => pairWork(hookup, travel));
  return (set) => {
    let [late, all] = [0, 0];
    for (const index of set.hookups) {
      late += works[index]!.lateNm;
      all += works[index]!.allNm;
    }
    return late > mostLateShare * all;
  };
}

/** Even cells over the way; the range that matters ends with one. */
const CELLS = 20;

/** By trapezoids. */
export function pairWork(hookup: PairHookup, travel: Travel): PairWork {
  const { bandN } = compileLoad({ ...travel, barKg: 0, chains: [], ...pairOnBar(hookup) });
  const cellM = (travel.lockoutM - travel.bottomM) / CELLS;
  const pulls = Array.from({ length: CELLS + 1 }, (_, i) => Math.abs(bandN(heightAt(travel, i / CELLS))));
  const above = (first: number) => {
    let sum = 0;
    for (let i = first; i < CELLS; i++) sum += ((pulls[i]! + pulls[i + 1]!) / 2) * cellM;
    return sum;
  };
  return { allNm: above(0), lateNm: above(rangeThatMatters.length - 1) };
}
