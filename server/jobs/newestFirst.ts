/** Works that wait for their turn under a key of their own. */
interface NewestFirst<T> {
  /** The same key asked again while it waits is one work. `behind`: only when nobody else waits. */
  ask(key: string, work: () => Promise<T>, behind: boolean): Promise<T>;
}

/** Does `width` works at a time; of those that wait, the one asked for last comes first. */
export function newestFirst<T>(width: number): NewestFirst<T> {
  const front = new Map<string, Waiting<T>>();
  const behindAll = new Map<string, Waiting<T>>();
  let atWork = 0;

  function next(): [string, Waiting<T>] | undefined {
    const [key] = [...front.keys()].slice(-1);
    return key === undefined ? behindAll.entries().next().value : [key, front.get(key)!];
  }

  async function workOff(): Promise<void> {
    if (atWork >= width) return;
    const first = next();
    if (!first) return;
    const [key, { work, resolve, reject }] = first;
    front.delete(key);
    behindAll.delete(key);
    atWork += 1;
    try {
      resolve(await work());
    } catch (error) {
      reject(error);
    }
    atWork -= 1;
    void workOff();
  }

  return {
    ask(key, work, behind) {
      const known = front.get(key) ?? behindAll.get(key);
      const waiting = known ?? whoWaits(work);
      if (!behind) {
        front.delete(key);
        behindAll.delete(key);
        front.set(key, waiting);
      } else if (!known) behindAll.set(key, waiting);
      void workOff();
      return waiting.result;
    },
  };
}

interface Waiting<T> {
  work: () => Promise<T>;
  result: Promise<T>;
  resolve: (value: T) => void;
  reject: (error: unknown) => void;
}

function whoWaits<T>(work: () => Promise<T>): Waiting<T> {
  let settle: Pick<Waiting<T>, 'resolve' | 'reject'> | undefined;
  const result = new Promise<T>((resolve, reject) => {
    settle = { resolve, reject };
  });
  return { work, result, ...settle! };
}
