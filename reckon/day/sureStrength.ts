import type { Reference } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Aim, Group } from '#contract/records/day.ts';
import { strengthIn } from '#core/strength/askDraws.ts';
import { centralDraw } from '#core/strength/drawCapability.ts';
import { belowMiddleLn, GOOD_DAY_LN } from '#core/strength/sureStrength.ts';
import type { AssembledCapability } from '#reckon/lifter/assembleCapability.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';
import { boundsOf } from './boundsOf.ts';

/** How far below its middle (ln) a lifter's strength is gone by, since no more of it is there with this chance. */
export interface SureStrength {
  belowLn: number;
  chance: number;
}

/** By the group's own setting, else by the club's. */
export function sureStrengthOf(
  records: Pick<ClubRecords, 'club'>,
  group: Pick<Group, 'bounds'>,
  { strengthSdLn }: Pick<AssembledCapability, 'strengthSdLn'>,
): SureStrength {
  const { strengthChance: chance } = boundsOf(records, group);
  return { belowLn: belowMiddleLn(strengthSdLn, chance), chance };
}

/** The same as a share of the middle. */
export function belowShareOf({ belowLn }: SureStrength): number {
  return 1 - Math.exp(belowLn);
}

/**
 * The maximum that percentages refer to: what stands in the records, but no more than what the lifter surely has on a good
 * day; the log's where no straight best stands there.
 */
export function sureReference(
  given: Reference,
  strength: AssembledCapability,
  equipment: Reference['equipment'],
  { belowLn }: SureStrength,
): Reference {
  const { estimate, capability } = strength;
  const bodyKg = capability.movedBodyKg;
  const middleLn =
    estimate === null
      ? Math.log(given.kg + bodyKg)
      : strengthIn({ equipment, platform: false }, centralDraw(drawsIn(estimate)));
  const atMostKg = Math.max(0, Math.exp(middleLn + belowLn + GOOD_DAY_LN) - bodyKg);
  if (estimate !== null && given.from === 'model') {
    const middleKg = Math.max(0, Math.exp(middleLn) - bodyKg);
    return { ...given, from: 'log', kg: Math.min(middleKg, atMostKg), equipment };
  }
  if (given.kg <= atMostKg) return given;
  return { ...given, from: estimate === null ? given.from : 'log', kg: atMostKg, loweredFromKg: given.kg };
}

/**
 * Shares of what a lifter can push are asked of the strength that is sure. A speed zone needs no such care: the first rep
 * shows whether the bar is too heavy, and percentages have their reference.
 */
export function sureAim(aim: Aim, sure: SureStrength): Aim {
  if (aim.by !== 'capability') return aim;
  const share = 1 - belowShareOf(sure);
  return { ...aim, bottomShare: share * aim.bottomShare, lockoutShare: share * aim.lockoutShare };
}
