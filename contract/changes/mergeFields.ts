/** Fields of a record by their names: plain JSON. */
export type Fields = Readonly<Record<string, unknown>>;

/** A field that two people changed to different things since both read it. */
export interface Clash {
  /** Where it stands: the field, then by turns the id of a thing in its list and a field of that: `groups`, `bench`, `title`. */
  path: string[];
  /** What the other one made of it; left out: it is gone. */
  theirs?: unknown;
  yours?: unknown;
}

export interface Merged {
  merged: Record<string, unknown>;
  /** What was decided by `prefer`; where there is none, both changes are whole in what was merged. */
  clashes: Clash[];
}

type Prefer = 'theirs' | 'yours';

/**
 * Brings two changes of one record together that both began from `found`: field by field, and in lists of things that bear an id
 * (groups of a day, lifters of a group) thing by thing. Any other value is one whole, since its parts may belong together. Only the
 * fields of `yours` are looked at; `prefer` says what goes where both changed the same.
 */
export function mergeFields(found: Fields, theirs: Fields, yours: Fields, prefer: Prefer): Merged {
  const clashes: Clash[] = [];
  const merged = Object.keys(yours).map((name) => [
    name,
    mergeValue([name], { found: found[name], theirs: theirs[name], yours: yours[name] }, prefer, clashes),
  ]);
  return { merged: Object.fromEntries(merged), clashes };
}

interface Three<T> {
  found: T;
  theirs: T;
  yours: T;
}

function mergeValue(path: string[], three: Three<unknown>, prefer: Prefer, clashes: Clash[]): unknown {
  const { found, theirs, yours } = three;
  if (isSame(yours, found) || isSame(yours, theirs)) return theirs;
  if (isSame(theirs, found)) return yours;
  const lists = asLists(three);
  if (lists) return mergeList(path, lists, prefer, clashes);
  clashes.push({
    path,
    ...(theirs !== undefined && { theirs }),
    ...(yours !== undefined && { yours }),
  });
  return three[prefer];
}

/** Things of a list by their ids, in the order of the list. */
type ById = ReadonlyMap<string, Fields>;

/** The lists where all three are lists of things with ids of their own. */
function asLists({ found, theirs, yours }: Three<unknown>): Three<ById> | null {
  const lists = { found: byId(found), theirs: byId(theirs), yours: byId(yours) };
  return lists.found && lists.theirs && lists.yours ? (lists as Three<ById>) : null;
}

function byId(value: unknown): ById | null {
  if (!Array.isArray(value)) return null;
  const things = new Map<string, Fields>();
  for (const thing of value as unknown[]) {
    const id = idOf(thing);
    if (id === null || things.has(id)) return null;
    things.set(id, thing as Fields);
  }
  return things;
}

/** A place in a group is told by its lifter. */
function idOf(thing: unknown): string | null {
  if (typeof thing !== 'object' || thing === null) return null;
  const { id, lifterId } = thing as Fields;
  const told = id ?? lifterId;
  return typeof told === 'string' ? told : null;
}

function mergeList(path: string[], lists: Three<ById>, prefer: Prefer, clashes: Clash[]): Fields[] {
  const { found, theirs, yours } = lists;
  const things = new Map<string, Fields>();
  for (const id of new Set([...theirs.keys(), ...yours.keys()])) {
    const three = { found: found.get(id), theirs: theirs.get(id), yours: yours.get(id) };
    const at = [...path, id];
    const thing =
      three.found && three.theirs && three.yours
        ? mergeThing(at, three as Three<Fields>, prefer, clashes)
        : (mergeValue(at, three, prefer, clashes) as Fields | undefined);
    if (thing) things.set(id, thing);
  }
  const leads = leadingOrder([...path, 'order'], lists, prefer, clashes);
  const follows = leads === yours ? theirs : yours;
  const ids = inOrder([...leads.keys()], [...follows.keys()]);
  return ids.map((id) => things.get(id)).filter((thing) => thing !== undefined);
}

/** The list whose order stands: that of who moved things, which both may have done. */
function leadingOrder(path: string[], lists: Three<ById>, prefer: Prefer, clashes: Clash[]): ById {
  const { found, theirs, yours } = lists;
  const isMoved = (list: ById) => !isSame(order(list, found), order(found, list));
  if (!isMoved(yours)) return isMoved(theirs) ? theirs : yours;
  const [theirOrder, yourOrder] = [order(theirs, yours), order(yours, theirs)];
  if (!isMoved(theirs) || isSame(theirOrder, yourOrder)) return yours;
  clashes.push({ path, theirs: theirOrder, yours: yourOrder });
  return lists[prefer];
}

function mergeThing(path: string[], three: Three<Fields>, prefer: Prefer, clashes: Clash[]): Fields {
  const names = new Set([...Object.keys(three.theirs), ...Object.keys(three.yours)]);
  const merged = [...names].map((name) => [
    name,
    mergeValue(
      [...path, name],
      { found: three.found[name], theirs: three.theirs[name], yours: three.yours[name] },
      prefer,
      clashes,
    ),
  ]);
  return Object.fromEntries(merged.filter(([, value]) => value !== undefined)) as Fields;
}

function order(list: ById, other: ById): string[] {
  return [...list.keys()].filter((id) => other.has(id));
}

/** The first order, and what only the second has after whatever stands before it there. */
function inOrder(first: string[], second: string[]): string[] {
  const all = [...first];
  second.forEach((id, i) => {
    if (!all.includes(id)) all.splice(i === 0 ? 0 : all.indexOf(second[i - 1]!) + 1, 0, id);
  });
  return all;
}

/** Whether two values are the same JSON; the order in which fields stand does not count. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const names = Object.keys(one);
  return (
    names.length === Object.keys(other).length &&
    names.every(
      (name) => Object.hasOwn(other, name) && isSame(Reflect.get(one, name), Reflect.get(other, name)),
    )
  );
}
