import type { KindName } from '#contract/records/allKinds.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/**
 * Tells one state of the club's records of these kinds from another by the number of a change, without reading them: the same number as long
 * as no change touches any.
 */
export function lastTouching(
  store: Pick<ClubStore, 'latestSeq' | 'changesTouching'>,
  kinds: readonly KindName[],
): () => Promise<number> {
  let known: { last: number; upTo: number } | undefined;
  return async () => {
    const upTo = await store.latestSeq();
    const before = known ?? { last: upTo, upTo };
    const [touching] = await store.changesTouching(kinds, before.upTo, 1);
    known = { last: touching === undefined ? before.last : upTo, upTo };
    return known.last;
  };
}
