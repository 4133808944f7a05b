import type { GroupAsked, Variant } from '#contract/records/method.ts';

/** Takes the next variant of a group in each week: the one that was done longest ago, the first of the list among those never done. */
export function rotation() {
  const done = new Map<string, number>();
  return (group: GroupAsked, week: number): Variant => {
    const since = (variant: Variant) => done.get(`${group.id} ${variant.id}`) ?? Number.NEGATIVE_INFINITY;
    const due = group.variants.reduce((best, each) => (since(each) < since(best) ? each : best));
    done.set(`${group.id} ${due.id}`, week);
    return due;
  };
}
