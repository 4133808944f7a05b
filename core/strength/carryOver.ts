import type { LnRatio } from '../numeric/quantity.ts';
import type { LiftModel, ReadModel } from './readGroup.ts';
import type { EffortGroup } from './sessions.ts';

/** Tiredness from set to set within a group: its mean at the sets' starts, and what is left after the last. */
export function carryOver(
  group: EffortGroup,
  { table }: ReadModel,
  { tiring }: LiftModel,
  surplus: LnRatio,
  before: { fast: number; slow: number },
): { carriedLn: LnRatio; after: { fast: number; slow: number } } {
  let { fast, slow } = before;
  let sum = 0;
  for (const restS of group.restS) {
    fast *= Math.exp(-restS / tiring.fastS);
    slow *= Math.exp(-restS / tiring.slowS);
    const carried = fast + slow;
    sum += carried;
    const reps = group.made + (group.missed ? 1 : 0);
    const start = Math.max(surplus - carried, table.neededFor(Math.max(1, group.made)));
    const lost = Math.min(0.5, table.lossOfSet(start, reps));
    fast += tiring.fastShare * lost;
    slow += (1 - tiring.fastShare) * lost;
  }
  return { carriedLn: sum / group.restS.length, after: { fast, slow } };
}
