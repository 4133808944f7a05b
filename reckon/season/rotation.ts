import { isSameStart } from '#contract/day/isSameStart.ts';
import type { Start } from '#contract/records/lift.ts';
import type { GroupAsked, Variant } from '#contract/records/method.ts';

/** A start that the coach chose for a group in a week, by its place in the season. */
export interface StartChosen {
  askedId: string;
  week: number;
  start: Start;
}

/**
 * Takes the next variant of a group in each week: the one that was done longest ago, the first of the list among those never done, of those that have
 * rested as long as the method says and that the coach has not chosen for a week before they would have rested again; of all of them where the
 * coach's choices leave none. Where the coach chose a start, that one is done, and rests afterwards if it is one of the list.
 */
export function rotation(chosenAhead: readonly StartChosen[] = []) {
  const done = new Map<string, number>();
  return (group: GroupAsked, week: number, chosen: Start | null): Variant => {
    const since = (variant: Variant) => done.get(`${group.id} ${variant.id}`) ?? Number.NEGATIVE_INFINITY;
    const comesTooSoon = (variant: Variant) =>
      chosenAhead.some(
        (one) =>
          one.askedId === group.id &&
          one.week >= week &&
          one.week - week <= group.restWeeks &&
          isSameStart(one.start, variant.start),
      );
    const hasRested = (variant: Variant) => week - since(variant) > group.restWeeks;
    const rested = group.variants.filter((variant) => hasRested(variant) && !comesTooSoon(variant));
    const open = rested.length > 0 ? rested : group.variants;
    const due = chosen
      ? variantOf(group, chosen)
      : open.reduce((best, each) => (since(each) < since(best) ? each : best));
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
