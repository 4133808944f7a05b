/** A list in as few parts as hold it, all about equally long; nothing makes one part. */
export function inPages<Each>(list: readonly Each[], most: number): (readonly Each[])[] {
  const pages = Math.max(1, Math.ceil(list.length / most));
  const each = Math.ceil(list.length / pages);
  return Array.from({ length: pages }, (_, page) => list.slice(page * each, (page + 1) * each));
}
