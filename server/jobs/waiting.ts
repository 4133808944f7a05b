/** Why an answer never comes: who asked has gone. */
export class AskerLeft extends Error {
  override readonly name = 'AskerLeft';
  constructor() {
    super('Who asked has gone.');
  }
}

/** An answer that is to come, and those who wait for it. */
export interface Waiting<T> {
  /** Waits for it until the signal says that this one has gone; without a signal to the end. */
  join(signal?: AbortSignal): Promise<T>;
  /** Aborted when the last one has gone. */
  left: AbortSignal;
  resolve(value: T): void;
  reject(error: unknown): void;
}

export function whoWaits<T>(): Waiting<T> {
  let settle: Pick<Waiting<T>, 'resolve' | 'reject'> | undefined;
  const result = new Promise<T>((resolve, reject) => {
    settle = { resolve, reject };
  });
  const leaving = new AbortController();
  let waiting = 0;
  return {
    ...settle!,
    left: leaving.signal,
    async join(signal) {
      waiting += 1;
      if (signal === undefined) return result;
      let leave: (() => void) | undefined;
      const gone = new Promise<never>((_, reject) => {
        leave = () => {
          waiting -= 1;
          reject(new AskerLeft());
          if (waiting === 0) leaving.abort(new AskerLeft());
        };
      });
      if (signal.aborted) leave!();
      else signal.addEventListener('abort', leave!, { once: true });
      try {
        return await Promise.race([result, gone]);
      } finally {
        signal.removeEventListener('abort', leave!);
      }
    },
  };
}
