import { compileLoad } from '#core/load/compileLoad.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import { heightAt, rangeThatMatters, type Travel } from './gearPull.ts';
import { feltSquare, meanSquare } from './misfit.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import { finestStepKg } from './plates.ts';

/** Whether a setup is another proposal than one that is known already. */
export type IsAnother = (one: PrescribedSetup, known: PrescribedSetup) => boolean;

/**
 * Tells proposals of one lifter at one rack apart. None is another with something added, the bare bar excepted; and one that
 * has no fewer pieces to hang is a load that the lifter can feel to be another, over the range that matters:
 *
 *   mean square of (load(s) - known load(s)) > felt^2 of the known load (`feltSquare`)
 *
 * So a pair in place of its twin, of the same width and nearly the same curve, is no proposal of its own.
 */
export function anotherProposal(travel: Travel, gear: RackGear): IsAnother {
  const stepKg = finestStepKg(gear);
  const loads = new Map<PrescribedSetup, number[]>();
  const loadN = (setup: PrescribedSetup): number[] => {
    const known = loads.get(setup);
    if (known !== undefined) return known;
    const { totalN } = compileLoad(gearLoad(gear, setup.set, travel, setup.barKg));
    const found = rangeThatMatters.map((s) => totalN(heightAt(travel, s)));
    loads.set(setup, found);
    return found;
  };
  return (one, known) => {
    if (!isAnotherSet(one.set, known.set)) return false;
    if (piecesOf(one.set) < piecesOf(known.set)) return true;
    const before = loadN(known);
    const apart = loadN(one).map((forceN, i) => forceN - before[i]!);
    return meanSquare(apart) > feltSquare(meanSquare(before), travel.gravityMps2, stepKg);
  };
}

/** Band pairs and pairs of chains that hang. */
export function piecesOf({ hookups, chainPairs }: GearSet): number {
  return hookups.length + chainPairs.reduce((sum, pairs) => sum + pairs, 0);
}

/** Whether neither set is the other with something added. The bare bar is a proposal of its own. */
export function isAnotherSet(a: GearSet, b: GearSet): boolean {
  if ((piecesOf(a) === 0) !== (piecesOf(b) === 0)) return true;
  return !holds(a, b) && !holds(b, a);
}

/** Whether `a` is `b`, or `b` with something added. */
function holds(a: GearSet, b: GearSet): boolean {
  return (
    b.hookups.every((index) => a.hookups.includes(index)) &&
    b.chainPairs.every((pairs, kind) => pairs <= a.chainPairs[kind]!)
  );
}
