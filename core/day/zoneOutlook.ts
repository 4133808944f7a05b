import { expectedSetMps } from '#core/effort/setSpeed.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import type { Capability } from '#core/rep/Capability.ts';
import { expectedRep } from '#core/rep/expectedSpeed.ts';
import { chanceInZone } from '#core/strength/chanceInZone.ts';
import { barSpeeds } from './barSpeed.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import type { LifterTask } from './misfit.ts';

/** The mean speed (m/s) to expect where the aim looks, 0 where a rep is missed, and the chance that a measured set lies in the zone. */
export interface ZoneOutlook {
  mps: number;
  chance: number;
}

/** Half of the stretch of ln strength over which the change of a speed is taken. */
const HALF_STEP_LN = 0.02;

/**
 * One bar of a rested lifter against the zone of their aim; null where the aim is no speed. `sdMps`: what is not known of this
 * lifter's speeds, beside the scatter of sets and days that is common to all.
 */
export function zoneOutlook(
  task: LifterTask,
  gear: RackGear,
  set: GearSet,
  barKg: number,
  sdMps: number,
): ZoneOutlook | null {
  const { aim, capability, speedCorrection } = task;
  if (aim.by !== 'speed') return null;
  const compiled = compileLoad(gearLoad(gear, set, task.travel, barKg));
  const mpsOf = (lifter: Capability): number => {
    if (aim.over === undefined) {
      const rep = expectedRep(compiled, lifter, 0, speedCorrection);
      return rep.made ? rep.meanSpeedMps : 0;
    }
    const speed = barSpeeds({ ...task, capability: lifter }, aim.over)(compiled);
    return speed === null ? 0 : expectedSetMps(speed, speedCorrection);
  };
  const stronger = (byLn: number) => ({ ...capability, strengthN: capability.strengthN * Math.exp(byLn) });
  const mps = mpsOf(capability);
  if (mps === 0) return { mps, chance: 0 };
  const perLnMps = (mpsOf(stronger(HALF_STEP_LN)) - mpsOf(stronger(-HALF_STEP_LN))) / (2 * HALF_STEP_LN);
  return { mps, chance: chanceInZone(aim, { mps, perLnMps }, 0, sdMps) };
}
