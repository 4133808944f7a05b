import { inTurn } from './inTurn.ts';
import { requestAgain } from './request.ts';

/**
 * A browser opens six connections to one place, and one listens for changes. What the server may work on for seconds shares three, so
 * that a change, or its undo, never waits for an answer.
 */
const atMostThree = inTurn(3);

/** Asks for what takes its time; what nobody waits for any more is let go. */
export function slowRequest<T>(path: string, signal: AbortSignal): Promise<T> {
  return atMostThree(() => requestAgain<T>(path, signal), signal);
}
