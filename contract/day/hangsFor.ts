import type { DayPlan } from './dayPlan.ts';

/** Ids of the lifters on whose bar a pair of bands or chains hangs by a day's plan, each once, in lifting order. */
export function hangsFor({ groups }: Pick<DayPlan, 'groups'>, pairId: string): string[] {
  const lifters = groups.flatMap(({ places }) =>
    places
      .filter(({ solved }) => {
        const { bands, chains } = solved?.set ?? { bands: [], chains: [] };
        return [
          ...bands.map((band) => band.bandPairId),
          ...chains.map((chain) => chain.chainPairId),
        ].includes(pairId);
      })
      .map(({ lifterId }) => lifterId),
  );
  return [...new Set(lifters)];
}
