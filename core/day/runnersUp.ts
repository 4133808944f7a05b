import { anotherProposal, piecesOf } from './anotherProposal.ts';
import type { GearSet, RackGear } from './Gear.ts';
import type { LifterTask } from './misfit.ts';
import { nextProposals, TIE } from './nextProposals.ts';
import type { PrescribedSetup } from './PrescribedSetup.ts';
import { rankSetups } from './rankSetups.ts';
import type { SearchRules } from './SearchRules.ts';
import type { SetupRanking } from './SetupRanking.ts';

/** What speaks for a setup beside another one, as data; `contract/words` says it. */
export type SpeaksFor =
  | { code: 'nearerToAim'; misfitLess: number }
  | { code: 'fewerPieces'; pieces: number }
  | { code: 'allMeasured' }
  | { code: 'samePairs' }
  | { code: 'heavierBar'; kg: number }
  | { code: 'lighterBar'; kg: number }
  | { code: 'nearlyAsGood'; misfitMore: number };

/** A setup beside the one that stands, and what speaks for it. */
export type RunnerUp = PrescribedSetup & { speaksFor: SpeaksFor[] };

/**
 * The best setups, at most `most`, that are other proposals than the one that stands. That one need not be the best: what
 * others need and what the coach fixed decided too. `ranked`: every set that may be proposed, the bar fixed where the coach did so.
 * `takenKg`: the bar that a setup will be taken with, for it may be made lighter than the search had it; what is told is of that bar.
 */
export function runnersUpTo(
  { set, barKg }: Pick<PrescribedSetup, 'set' | 'barKg'>,
  task: LifterTask,
  gear: RackGear,
  rules: SearchRules,
  ranked: SetupRanking,
  most: number,
  takenKg: (one: PrescribedSetup) => number = (one) => one.barKg,
): RunnerUp[] {
  const scored = (set: GearSet, barKg: number): PrescribedSetup => {
    const { misfit } = rankSetups(task, gear, { barKg, set }, rules).fromBest()()!;
    return { set, barKg, misfit };
  };
  // Scored anew, for the bar that stands may have been made lighter too.
  const standing = scored(set, barKg);
  const isAnother = anotherProposal(task.travel, gear);
  const found = nextProposals(ranked.fromBest(), ranked.sets, isAnother, [standing], most);
  const taken = found.map((one) => {
    const kg = takenKg(one);
    return kg === one.barKg ? one : scored(one.set, kg);
  });
  if (taken.some((one, i) => one !== found[i])) taken.sort((a, b) => a.misfit - b.misfit);
  return taken.map((one) => ({ ...one, speaksFor: speaksFor(one, standing, gear) }));
}

/** What speaks for it; never nothing: how much nearer to the aim it is, or how little further, is always said. */
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
  const more = one.misfit - best.misfit;
  if (more < -TIE) return [{ code: 'nearerToAim', misfitLess: -more }, ...found];
  return [...found, { code: 'nearlyAsGood', misfitMore: Math.max(0, more) }];
}

function isMeasured({ hookups }: GearSet, gear: RackGear): boolean {
  return hookups.every((index) => {
    const { rigged, measured } = gear.hookups[index]!;
    return measured !== null || rigged.every(({ curves }) => curves.loading.known === 'measured');
  });
}
