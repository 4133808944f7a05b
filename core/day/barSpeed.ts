import { RESTED } from '#core/effort/fatigue.ts';
import { repTable } from '#core/effort/repTable.ts';
import { type SetSpeed, setSpeed } from '#core/effort/setSpeed.ts';
import { walkSet } from '#core/effort/walkSession.ts';
import { type CompiledLoad, compileLoad, griddedLoad } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import { gridded } from '#core/numeric/gridded.ts';
import { ascend } from '#core/rep/ascend.ts';
import { FRESH, limitFrom } from '#core/rep/expectedSpeed.ts';
import { strengthCurve } from '#core/rep/strengthCurve.ts';
import type { WholeSet } from './Aim.ts';
import type { LifterTask } from './misfit.ts';

/** Pulls and strength curves are read off so many cells: to 1e-5 of them. */
const CELLS = 256;
/** Error allowed in a step of a rep: mean speeds to about 1e-5 of themselves, far within a tie of two misfits. */
const STEP_TOLERANCE = 1e-6;
/** A search of many limits goes on from the last one; a surplus to 4e-4 gives a speed to some tenths of a mm/s. */
const LIKE_THE_LAST = { step: 0.006, tolerance: 4e-4 };

/**
 * Speed and surplus of a rested lifter's first rep with a load, or their means over a whole set, made ready for many loads;
 * null where a rep is missed.
 */
export function barSpeeds(
  { capability, speedCorrection, travel }: Pick<LifterTask, 'capability' | 'speedCorrection' | 'travel'>,
  over: WholeSet | undefined,
): (compiled: CompiledLoad) => SetSpeed | null {
  const curve = gridded(strengthCurve(capability), travel.bottomM, travel.lockoutM, CELLS);
  if (over !== undefined) {
    const upToLn = speedCorrection?.upToLn ?? 0;
    return (compiled) => {
      const table = repTable(compiled, capability, over.tiring.loweringS, curve);
      return table && setSpeed(table, walkSet(table, over.reps, over.tiring, RESTED), upToLn);
    };
  }
  let start = FRESH;
  return (compiled) => {
    const { made, states } = ascend(compiled, capability, STEP_TOLERANCE, curve);
    if (!made) return null;
    const mps = (travel.lockoutM - travel.bottomM) / states[states.length - 1]!.t;
    const limit = speedCorrection === undefined ? null : limitFrom(start, compiled, capability, curve);
    if (limit === null) return { mps, surplusLn: 0 };
    // Sets of bands are alike enough that the next limit lies about as far from its guess as this one.
    start = { ...LIKE_THE_LAST, share: limit.share };
    return { mps, surplusLn: Math.log(capability.strengthN / limit.limitN) };
  };
}

/** A load in a form that reps are worked out with in a quarter of the time. */
export function quickLoad(load: Load): CompiledLoad {
  return griddedLoad(compileLoad(load), CELLS);
}
