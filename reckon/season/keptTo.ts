import type { GroupAsked, Variant } from '#contract/records/method.ts';
import type { HeldTo } from '#contract/season/heldTo.ts';
import { isSameStartAsked } from '#contract/season/isSameStartAsked.ts';
import { type AimOfWeek, scaledAim } from './dayAim.ts';

/** What is held to in a lift on a day. */
export function heldOn(held: readonly HeldTo[], lift: GroupAsked['lift'], date: string): HeldTo[] {
  return held.filter(
    (one) => one.lift === lift && one.from <= date && (one.until === null || date <= one.until),
  );
}

/** The starts of a group that are not too deep; where none is left a box of the height that still may be sat on. */
export function startsKeptTo(group: GroupAsked, held: readonly HeldTo[]): GroupAsked {
  const isTooDeep = ({ start }: Variant) =>
    held.some(({ tooDeep }) => tooDeep.some((one) => isSameStartAsked(one, start)));
  const variants = group.variants.filter((variant) => !isTooDeep(variant));
  if (variants.length > 0) return { ...group, variants };
  const heightM = Math.max(...held.map(({ leastBoxM }) => leastBoxM ?? 0));
  const box = {
    id: HIGHER_BOX,
    title: 'off the box that is allowed',
    start: { way: 'box' as const, heightM },
  };
  return { ...group, variants: [box] };
}

/** The name of a start that is none of the method's variants. */
const HIGHER_BOX = 'held-box';

/** The aim with all of it less in the same proportion, as far as its heaviest step is more than may be held; an aim at no share is limited when the day is worked out. */
export function aimKeptTo(
  aim: AimOfWeek,
  blocks: GroupAsked['blocks'][number],
  held: readonly HeldTo[],
): AimOfWeek {
  const { lockoutShare, bandShare } = aim;
  if (lockoutShare === null) return aim;
  const heaviestStep = Math.max(1, ...blocks.map(({ shareOfAim }) => shareOfAim));
  const factors = held.flatMap(({ mostShare, shareOf }) => {
    const share = shareOf === 'lockout' ? lockoutShare : lockoutShare - (bandShare ?? 0);
    return mostShare === null || share <= 0 ? [] : [mostShare / (share * heaviestStep)];
  });
  const factor = Math.min(1, ...factors);
  return factor === 1 ? aim : scaledAim(aim, factor);
}
