/** Lets `width` works run at a time, in the order in which they come. */
export function inTurn(width: number): <T>(work: () => Promise<T>) => Promise<T> {
  let free = width;
  const waiting: (() => void)[] = [];
  return async (work) => {
    if (free === 0) await new Promise<void>((resolve) => waiting.push(resolve));
    else free -= 1;
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else free += 1;
    }
  };
}
