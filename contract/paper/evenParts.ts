/** A list in so many parts, in its order, none longer than another by more than one: 14 in 2 are 7 and 7. No more parts than members. */
export function evenParts<T>(all: readonly T[], parts: number): T[][] {
  const many = Math.max(1, Math.min(Math.floor(parts), all.length));
  const from = (part: number) => Math.ceil((part * all.length) / many);
  return Array.from({ length: many }, (_, part) => all.slice(from(part), from(part + 1)));
}
