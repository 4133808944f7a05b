/**
 * Answers a question once for all who ask it while it is worked on, as long as `state` is what it was when that began: sixty screens of one
 * day ask the same in the same second. Who asks after a change is never given what was begun before it.
 */
export function askedTogether<Answer>(
  state: () => Promise<string>,
  answer: (id: string) => Promise<Answer>,
): (id: string) => Promise<Answer> {
  const underWay = new Map<string, Promise<Answer>>();
  return async (id) => {
    const key = `${await state()} ${id}`;
    const same = underWay.get(key);
    if (same !== undefined) return same;
    const begun = answer(id).finally(() => underWay.delete(key));
    underWay.set(key, begun);
    return begun;
  };
}
