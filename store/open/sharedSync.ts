/**
 * Brings what was written to the disk, never twice at a time: who asks while it is under way shares the next with all who ask until
 * then, for what they wrote may have come too late for this one. A fault goes to all who shared it.
 */
export function sharedSync(sync: () => Promise<void>): () => Promise<void> {
  let underWay: Promise<void> | undefined;
  let next: Promise<void> | undefined;

  function begin(): Promise<void> {
    next = undefined;
    const begun = sync().finally(() => {
      if (underWay === begun) underWay = undefined;
    });
    underWay = begun;
    return begun;
  }

  return () => {
    if (underWay === undefined) return begin();
    next ??= underWay.catch(() => {}).then(begin);
    return next;
  };
}
