import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group } from '#contract/records/day.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { holdsOn, type Restriction } from '#contract/records/lifters.ts';
import type { MostLoad } from '#core/day/mostLoad.ts';

/** Bars or boxes that differ by less are the same: nobody measures them closer (m). */
const SAME_HEIGHT_M = 0.005;

/** What a lifter is held to in a lift on a day. */
export function restrictionsOn(
  records: Pick<ClubRecords, 'restriction'>,
  lifterId: string,
  lift: Lift,
  on: string,
): Restriction[] {
  return records.restriction.filter(
    (one) => one.lifterId === lifterId && one.lift === lift && holdsOn(one, on),
  );
}

/** Why a start is too deep for what a lifter is held to; null: it is not. `bottomOnBoxM` says where the bar is on a box. */
export function tooDeep(
  restrictions: readonly Restriction[],
  start: Start,
  bottomM: number,
  bottomOnBoxM: (boxM: number) => number,
): string | null {
  const broken = restrictions.find(({ leastBoxM }) => {
    if (leastBoxM === null) return false;
    return start.way === 'box'
      ? (start.heightM ?? 0) < leastBoxM - SAME_HEIGHT_M
      : bottomM < bottomOnBoxM(leastBoxM) - SAME_HEIGHT_M;
  });
  if (broken === undefined) return null;
  const cm = `${Number((100 * broken.leastBoxM!).toFixed(1))} cm`;
  const until = broken.untilOn === null ? 'until further notice' : `until ${broken.untilOn}`;
  return `Restricted ${until}: no deeper than on a box of ${cm}, and this start is deeper. Give this lifter a box of at least ${cm}.`;
}

/** The most that a lifter may hold, over all that the lifter is held to; undefined where nothing limits it. */
export function mostLoadOf(
  restrictions: readonly Restriction[],
  referenceKg: number,
  { blocks }: Pick<Group, 'blocks'>,
): MostLoad | undefined {
  const most = (of: Restriction['shareOf']) =>
    Math.min(
      Number.POSITIVE_INFINITY,
      ...restrictions.flatMap(({ mostShare, shareOf }) =>
        mostShare === null || shareOf !== of ? [] : [mostShare * referenceKg],
      ),
    );
  const [barKg, lockoutKg] = [most('bar'), most('lockout')];
  if (Math.min(barKg, lockoutKg) === Number.POSITIVE_INFINITY) return undefined;
  return { barKg, lockoutKg, heaviestStep: Math.max(1, ...blocks.map(({ shareOfAim }) => shareOfAim)) };
}

/** What a lifter is held to, told with every plan, and whether a step of it, set by hand, is more than that. */
export function restrictionCautions(
  restrictions: readonly Restriction[],
  referenceKg: number,
  blocks: readonly Pick<PlanBlock, 'barKg' | 'explanation'>[],
  gravityMps2: number,
): PlanCaution[] {
  return restrictions.map(({ leastBoxM, mostShare, shareOf, untilOn }) => {
    const mostKg = mostShare === null ? null : mostShare * referenceKg;
    const heldKg = blocks.map(({ barKg, explanation }) =>
      shareOf === 'bar' ? barKg : explanation.lockout.totalN / gravityMps2,
    );
    const isBroken = mostKg !== null && Math.max(...heldKg) > mostKg + ROUNDING_KG;
    return { code: 'restricted', leastBoxM, mostShare, mostKg, shareOf, untilOn, isBroken };
  });
}

const ROUNDING_KG = 1e-6;
