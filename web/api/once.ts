import { RequestError } from './request.ts';

/**
 * Sends sets with ids that are made here, at the tap, one for each. Where no answer came the same sets sent again bear the same ids, so
 * that the log has each of them once whether or not the first try arrived.
 */
export async function once<Answer>(
  sets: readonly object[],
  send: (ids: readonly string[]) => Promise<Answer>,
): Promise<Answer> {
  const key = JSON.stringify(sets);
  const ids = unanswered.get(key) ?? sets.map(newSetId);
  unanswered.set(key, ids);
  try {
    const answer = await send(ids);
    unanswered.delete(key);
    return answer;
  } catch (error) {
    // What was refused is not there.
    if (error instanceof RequestError && error.status >= 400 && error.status < 500) unanswered.delete(key);
    throw error;
  }
}

const unanswered = new Map<string, readonly string[]>();

/** As the store makes them: the time in milliseconds, then chance. */
function newSetId(): string {
  const chance = crypto.getRandomValues(new Uint32Array(2));
  const digits = Array.from(chance, (number) => number.toString(36).padStart(7, '0')).join('');
  return Date.now().toString(36).padStart(9, '0') + digits;
}
