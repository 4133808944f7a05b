/**
 * Lets at most `most` pieces of work run at once; the others wait in their order. One whose `signal` says stop while it waits
 * never begins.
 */
export function inTurn(most: number) {
  let running = 0;
  const waiting: (() => void)[] = [];
  const begin = (signal: AbortSignal) =>
    new Promise<void>((resolve, reject) => {
      if (signal.aborted) return reject(stopped());
      if (running < most) {
        running++;
        return resolve();
      }
      const next = () => {
        signal.removeEventListener('abort', leave);
        resolve();
      };
      const leave = () => {
        waiting.splice(waiting.indexOf(next), 1);
        reject(stopped());
      };
      signal.addEventListener('abort', leave, { once: true });
      waiting.push(next);
    });
  const end = () => {
    const next = waiting.shift();
    if (next) next();
    else running--;
  };
  return async <T>(work: () => Promise<T>, signal: AbortSignal): Promise<T> => {
    await begin(signal);
    try {
      return await work();
    } finally {
      end();
    }
  };
}

function stopped(): DOMException {
  return new DOMException('Nobody waits for it any more.', 'AbortError');
}
