/**
 * Works an answer out once for the same things, which are never changed: asked again for them it gives what it gave. An answer goes when one of its
 * things does.
 */
export function onceFor<Of extends object[], Made>(make: (...of: Of) => Made): (...of: Of) => Made {
  const known = new WeakMap<object, unknown>();
  return (...of) => {
    let at = known;
    for (const each of of.slice(0, -1)) {
      const next = (at.get(each) as typeof known | undefined) ?? new WeakMap();
      at.set(each, next);
      at = next;
    }
    const last = of.at(-1)!;
    if (!at.has(last)) at.set(last, make(...of));
    return at.get(last) as Made;
  };
}
