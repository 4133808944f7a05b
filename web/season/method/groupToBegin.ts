import type { Aim } from '#contract/records/day.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { AimInTurn, GroupAsked, StartAsked, Variant } from '#contract/records/method.ts';
import { startAskedText } from '#contract/season/depthWords.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { firstAim } from '#web/setup/firstAim.ts';
import { startingGroup, usualBoxM } from '#web/setup/startingPoints.ts';
import { freeId, freeTitle } from './titledList.ts';

/** A group as the day screen begins it, the same in each week: the kind of work sets sets, reps, rest and aim. */
export function groupToBegin(
  beside: readonly GroupAsked[],
  work: GroupAsked['work'],
  lift: Lift,
  unit: LengthUnit,
): GroupAsked {
  const { title, start, aim, blocks } = startingGroup('', work, lift, usualBoxM);
  return {
    id: freeId(beside, 'group'),
    title: freeTitle(beside, title),
    work,
    lift,
    variants: [variantOf(lift, start, [], unit)],
    restWeeks: 0,
    aim: inEachWeek(aim),
    blocks: [blocks],
    leastChance: null,
    bounds: null,
  };
}

/** A start among others, called by what it is. */
export function variantOf(
  lift: Lift,
  start: StartAsked,
  beside: readonly Variant[],
  unit: LengthUnit,
): Variant {
  return { id: freeId(beside, 'start'), title: freeTitle(beside, startAskedText(lift, start, unit)), start };
}

/** What each aim of a method begins with. Bands by wave: common practice, no source. */
export const firstAimInTurn: Record<AimInTurn['by'], AimInTurn> = {
  percent: inEachWeek(firstAim.percent),
  barAndBands: { by: 'barAndBands', barShares: [0.5], bandShares: [0.25], levels: [] },
  capability: inEachWeek(firstAim.capability),
  speed: inEachWeek(firstAim.speed),
};

function inEachWeek(aim: Aim): AimInTurn {
  switch (aim.by) {
    case 'percent':
      return { by: 'percent', targets: aim.targets.map(({ basis, share }) => ({ basis, shares: [share] })) };
    case 'capability':
      return { by: 'capability', bottomShares: [aim.bottomShare], lockoutShares: [aim.lockoutShare] };
    case 'speed': {
      const { fromMps, toMps, of = 'firstRep' } = aim;
      return { by: 'speed', zones: [{ fromMps, toMps }], of };
    }
  }
}
