import type { GearSet, RackGear } from './Gear.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';

/** What speaks for a setup beside the best one, as data; `contract/words` says it. */
export type SpeaksFor =
  | { code: 'fewerPieces'; pieces: number }
  | { code: 'allMeasured' }
  | { code: 'heavierBar'; kg: number }
  | { code: 'lighterBar'; kg: number }
  | { code: 'samePairs' }
  | { code: 'nearlyAsGood'; misfitMore: number };

/**
 * Whether two sets are different proposals: neither is the other with something added. The bare bar is a proposal of its
 * own.
 */
export function isAnother(a: GearSet, b: GearSet): boolean {
  if (isBare(a) !== isBare(b)) return true;
  return !holds(a, b) && !holds(b, a);
}

/** What speaks for it; never nothing: how little it is worse is the last word. */
export function speaksFor(one: PrescribedSetup, best: PrescribedSetup, gear: RackGear): SpeaksFor[] {
  const found: SpeaksFor[] = [];
  const fewer = piecesOf(best.set) - piecesOf(one.set);
  if (fewer > 0) found.push({ code: 'fewerPieces', pieces: fewer });
  if (one.set.hookups.length > 0 && isMeasured(one.set, gear) && !isMeasured(best.set, gear))
    found.push({ code: 'allMeasured' });
  const pairs = ({ hookups }: GearSet) => hookups.map((index) => gear.hookups[index]!.pairId).sort();
  if (one.set.hookups.length > 0 && pairs(one.set).join() === pairs(best.set).join())
    found.push({ code: 'samePairs' });
  const kg = one.barKg - best.barKg;
  if (kg > 0) found.push({ code: 'heavierBar', kg });
  if (kg < 0) found.push({ code: 'lighterBar', kg: -kg });
  found.push({ code: 'nearlyAsGood', misfitMore: Math.max(0, one.misfit - best.misfit) });
  return found;
}

function isBare({ hookups, chainPairs }: GearSet): boolean {
  return hookups.length === 0 && chainPairs.every((pairs) => pairs === 0);
}

/** Whether `a` is `b`, or `b` with something added. */
function holds(a: GearSet, b: GearSet): boolean {
  return (
    b.hookups.every((index) => a.hookups.includes(index)) &&
    b.chainPairs.every((pairs, kind) => pairs <= a.chainPairs[kind]!)
  );
}

function piecesOf({ hookups, chainPairs }: GearSet): number {
  return hookups.length + chainPairs.reduce((sum, pairs) => sum + pairs, 0);
}

function isMeasured({ hookups }: GearSet, gear: RackGear): boolean {
  return hookups.every((index) => {
    const { rigged, measured } = gear.hookups[index]!;
    return measured !== null || rigged.every(({ curves }) => curves.loading.known === 'measured');
  });
}
