import type { RuleOfThumb } from '#contract/projection/liftProjection.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { gymGains } from '#reckon/evidence/gymGains.ts';
import { hardLifts } from '#reckon/evidence/hardLifts.ts';
import { meanPull } from '#reckon/evidence/meanPull.ts';
import { meetLifts } from '#reckon/evidence/meetLifts.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';

/** Whose lift is asked for, in what, and before which day. */
interface RuleAsked {
  lifterId: string;
  lift: Lift;
  equipment: Equipment;
  on: string;
}

export interface RulesOfThumb {
  bestSoFarKg: number | null;
  rule: RuleOfThumb | null;
}

/**
 * What one would say without a model, from what was done before a day: the heaviest straight lift so far, and the last
 * meet with the gain at one exact gym setup added, kilogram for kilogram. Of several setups the one done most often speaks, as
 * on the page of the evidence.
 */
export function rulesOfThumb(
  records: LoadRecords & Pick<ClubRecords, 'best'>,
  log: readonly LoggedSet[],
  asked: RuleAsked,
): RulesOfThumb {
  const isOwn = ({ lifterId, lift, doneOn }: { lifterId: string; lift: Lift; doneOn: string }) =>
    lifterId === asked.lifterId && lift === asked.lift && doneOn < asked.on;
  const sets = log.filter((set) => isOwn(set) && set.struckAt === null);
  const bests = records.best.filter(isOwn);
  const straight = [...sets.filter(({ made }) => made > 0), ...bests].filter(
    ({ equipment, setup }) => equipment === asked.equipment && isStraight(setup),
  );
  const last = meetLifts(sets, bests)
    .filter(({ equipment }) => equipment === asked.equipment)
    .at(-1);
  return {
    bestSoFarKg: straight.length === 0 ? null : Math.max(...straight.map(({ setup }) => setup.barKg)),
    rule: last === undefined ? null : addedGain(records, sets, bests, last, asked.on),
  };
}

function addedGain(
  records: LoadRecords,
  sets: readonly LoggedSet[],
  bests: ClubRecords['best'],
  before: ReturnType<typeof meetLifts>[number],
  on: string,
): RuleOfThumb | null {
  const lifts = hardLifts(sets, bests, meanPull(records));
  // Only the day of the meet ahead is known of it; what it will bring is not asked for.
  const [gain] = gymGains([{ before, after: { ...before, doneOn: on } }], lifts);
  if (gain === undefined) return null;
  const gainKg = gain.to.barKg - gain.from.barKg;
  return {
    barKg: before.barKg + gainKg,
    lastMeetOn: before.doneOn,
    lastMeetKg: before.barKg,
    gainKg,
  };
}

function isStraight({ start, bands, chains }: Setup): boolean {
  return (start.way === 'free' || start.way === 'paused') && bands.length === 0 && chains.length === 0;
}
