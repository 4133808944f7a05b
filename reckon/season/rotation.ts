import { isSameStart } from '#contract/day/isSameStart.ts';
import type { Start } from '#contract/records/lift.ts';
import type { GroupAsked, Variant } from '#contract/records/method.ts';

/**
 * Takes the next variant of a group in each week: the one that was done longest ago, the first of the list among those never done. Where the
 * coach chose a start, that one is done, and rests afterwards if it is one of the list.
 */
export function rotation() {
  const done = new Map<string, number>();
  return (group: GroupAsked, week: number, chosen: Start | null): Variant => {
    const since = (variant: Variant) => done.get(`${group.id} ${variant.id}`) ?? Number.NEGATIVE_INFINITY;
    const due = chosen
      ? variantOf(group, chosen)
      : group.variants.reduce((best, each) => (since(each) < since(best) ? each : best));
    done.set(`${group.id} ${due.id}`, week);
    return due;
  };
}

function variantOf({ variants }: GroupAsked, start: Start): Variant {
  return (
    variants.find((variant) => isSameStart(variant.start, start)) ?? { id: BY_HAND, title: 'By hand', start }
  );
}

/** The name of a start that is none of the method's variants. */
const BY_HAND = 'by-hand';
