import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { counted } from '#contract/words/counted.ts';

/** Gear on one lifter's worked-out bar that is out of service on the day, a sentence each. */
export function goneGear(
  { solved }: Pick<PlanPlace, 'solved'>,
  date: string,
  gear: Pick<ClubRecords, 'bandPair' | 'chainPair'>,
): string[] {
  const said: string[] = [];
  const { bands, chains } = solved?.set ?? { bands: [], chains: [] };
  for (const { bandPairId, label } of bands) {
    const pair = gear.bandPair.find(({ id }) => id === bandPairId);
    if (pair === undefined || (pair.retiredOn !== null && pair.retiredOn <= date))
      said.push(`${label} is out of service: do not hang it.`);
  }
  for (const { chainPairId, label, pairs } of chains) {
    const left = gear.chainPair.find(({ id }) => id === chainPairId)?.pairs ?? 0;
    if (left === 0) said.push(`Chain ${label} is out of service: do not hang it.`);
    else if (left < pairs)
      said.push(`Only ${counted(left, 'pair')} of chain ${label} left: do not count on ${pairs}.`);
  }
  return said;
}
