import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { usualBounds } from '#contract/records/bounds.ts';
import type { Group } from '#contract/records/day.ts';
import { belowMiddleLn } from '#core/strength/sureStrength.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { belowShareOf } from './sureStrength.ts';

/** Strength that is gone by this much below its middle (ln) at the usual chance is known badly: a set should tell more; judgement. */
const WIDE_LN = 0.02;

/** How badly strength is known, what was taken off for it, and which set would tell more; nothing where it is known well. */
export function strengthCautions(
  { aim, blocks }: Pick<Group, 'aim' | 'blocks'>,
  { strength, sure, reference }: Pick<AssembledPlace, 'strength' | 'sure' | 'reference'>,
): PlanCaution[] {
  const sdLn = strength.strengthSdLn;
  if (belowMiddleLn(sdLn, usualBounds.strengthChance) > -WIDE_LN) return [];
  const isLowered = aim.by === 'capability' || (aim.by === 'percent' && reference.loweredFromKg !== null);
  return [
    {
      code: 'strengthWide',
      sdLn,
      chance: sure.chance,
      belowShare: isLowered ? belowShareOf(sure) : 0,
      workUp: blocks.some(({ shareOfAim }) => shareOfAim < 1),
    },
  ];
}
