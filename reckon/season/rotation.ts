import type { GroupAsked, StartAsked, Variant } from '#contract/records/method.ts';
import { isSameStartAsked } from '#contract/season/isSameStartAsked.ts';

/** A start that the coach chose for a group in a week, by its place in the season. */
export interface StartChosen {
  askedId: string;
  week: number;
  start: StartAsked;
}

/**
 * Takes the next variant of a group in each week: the one that was done longest ago, the first of the list among those never done, without those that
 * the coach has chosen for a week before they would have rested again, unless that leaves none. The longest ago has rested as long as the
 * method says where any has. Where the coach chose a start, that one is done, and rests afterwards if it is one of the list.
 */
export function rotation(chosenAhead: readonly StartChosen[] = []) {
  const done = new Map<string, number>();
  const since = (group: GroupAsked, variant: Variant) =>
    done.get(`${group.id} ${variant.id}`) ?? Number.NEGATIVE_INFINITY;
  return (group: GroupAsked, week: number, chosen: StartAsked | null): Variant => {
    const free = group.variants.filter((variant) => !comesTooSoon(chosenAhead, group, week, variant));
    const open = free.length > 0 ? free : group.variants;
    const due = chosen
      ? variantOf(group, chosen)
      : open.reduce((best, each) => (since(group, each) < since(group, best) ? each : best));
    done.set(`${group.id} ${due.id}`, week);
    return due;
  };
}

function comesTooSoon(
  chosenAhead: readonly StartChosen[],
  { id, restWeeks }: GroupAsked,
  week: number,
  variant: Variant,
): boolean {
  return chosenAhead.some(
    (one) =>
      one.askedId === id &&
      one.week >= week &&
      one.week - week <= restWeeks &&
      isSameStartAsked(one.start, variant.start),
  );
}

function variantOf({ variants }: GroupAsked, start: StartAsked): Variant {
  const asked = variants.find((variant) => isSameStartAsked(variant.start, start));
  return asked ?? { id: BY_HAND, title: 'By hand', start };
}

/** The name of a start that is none of the method's variants. */
const BY_HAND = 'by-hand';
