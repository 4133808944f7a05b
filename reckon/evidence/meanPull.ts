import { setupKey } from '#contract/log/setupKey.ts';
import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { curveOf } from '#core/load/loadCurve.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleLoad, type LoadRecords } from '#reckon/lifter/assembleLoad.ts';

interface HungSet {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  setup: Setup;
  doneOn: string;
}

/** Mean pull of bands and chains over a lifter's range, kg; null where the club's records no longer tell. */
export type MeanPull = (set: HungSet) => { bandKg: number; chainKg: number } | null;

const NOTHING = { bandKg: 0, chainKg: 0 };

/** Works each lifter's exact setup out once, as the gear was when it was first used. */
export function meanPull(records: LoadRecords): MeanPull {
  const known = new Map<string, { bandKg: number; chainKg: number } | null>();
  return (set) => {
    if (set.setup.bands.length === 0 && set.setup.chains.length === 0) return NOTHING;
    const key = `${set.lifterId} ${setupKey(set)}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const pull = workedOut(records, set);
    known.set(key, pull);
    return pull;
  };
}

function workedOut(records: LoadRecords, { lifterId, lift, setup, doneOn }: HungSet) {
  const meanKg = (hung: Pick<Setup, 'bands' | 'chains'>) => {
    const bare = { ...setup, barKg: 0, ...hung };
    const { load } = assembleLoad(records, { lifterId, lift, setup: bare, on: doneOn });
    return curveOf(compileLoad(load), 2).meanN / load.gravityMps2;
  };
  return assembledOrNull(() => ({
    bandKg: setup.bands.length === 0 ? 0 : meanKg({ bands: setup.bands, chains: [] }),
    chainKg: setup.chains.length === 0 ? 0 : meanKg({ bands: [], chains: setup.chains }),
  }));
}
