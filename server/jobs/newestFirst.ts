import { type Waiting, whoWaits } from './waiting.ts';

export interface HowAsked {
  /** Only when nobody else waits. */
  behind?: boolean;
  /** Aborted when who asked has gone; without it the answer is waited for to the end. */
  signal?: AbortSignal | undefined;
}

/** Works that wait for their turn under a key of their own. */
interface NewestFirst<T> {
  /** The same key asked again while it waits is one work, done as it was asked for last. */
  ask(key: string, work: (run: Waiting<T>) => Promise<T>, how?: HowAsked): Promise<T>;
}

/** Does `width` works at a time; of those that wait, the one asked for last comes first. One that nobody waits for is dropped. */
export function newestFirst<T>(width: number): NewestFirst<T> {
  const front = new Map<string, Turn<T>>();
  const behindAll = new Map<string, Turn<T>>();
  let atWork = 0;

  function next(): [string, Turn<T>] | undefined {
    const [key] = [...front.keys()].slice(-1);
    return key === undefined ? behindAll.entries().next().value : [key, front.get(key)!];
  }

  async function workOff(): Promise<void> {
    if (atWork >= width) return;
    const first = next();
    if (!first) return;
    const [key, { work, run }] = first;
    front.delete(key);
    behindAll.delete(key);
    atWork += 1;
    try {
      run.resolve(await work(run));
    } catch (error) {
      run.reject(error);
    }
    atWork -= 1;
    void workOff();
  }

  function newRun(key: string): Waiting<T> {
    const run = whoWaits<T>();
    const drop = () => {
      for (const waiting of [front, behindAll]) if (waiting.get(key)?.run === run) waiting.delete(key);
    };
    run.left.addEventListener('abort', drop, { once: true });
    return run;
  }

  return {
    ask(key, work, { behind = false, signal } = {}) {
      const run = (front.get(key) ?? behindAll.get(key))?.run ?? newRun(key);
      if (!behind) {
        front.delete(key);
        behindAll.delete(key);
      }
      (behind && !front.has(key) ? behindAll : front).set(key, { work, run });
      const answer = run.join(signal);
      void workOff();
      return answer;
    },
  };
}

interface Turn<T> {
  work: (run: Waiting<T>) => Promise<T>;
  run: Waiting<T>;
}
