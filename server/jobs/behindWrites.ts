import type { ClubStore } from '#store/ClubStore.ts';
import { inTurn } from './inTurn.ts';

/** Does a work in its turn. */
export type TakeIn = ReturnType<typeof behindWrites>;

/**
 * Does works that hold the club's file for long, one at a time and each behind all writes that are waiting when its turn comes: whoever logs
 * a set beside one large file after another waits for one of them at most.
 */
export function behindWrites(
  store: Pick<ClubStore, 'behindWrites'>,
): <T>(work: () => Promise<T>) => Promise<T> {
  const inItsTurn = inTurn(1);
  return (work) => inItsTurn(() => store.behindWrites(work));
}
