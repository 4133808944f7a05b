/** Phases, groups and starts: each with an id and a title that no other of its list has. */
interface Titled {
  id: string;
  title: string;
}

/** The list with one of them so many places later. */
export function moved<Each>(list: readonly Each[], at: number, by: 1 | -1): Each[] {
  return list.toSpliced(at, 1).toSpliced(at + by, 0, list[at]!);
}

/** The list with another one just like one of them behind it, under an id and a title of its own; `word`: what ids of the list begin with. */
export function withCopyAfter<Each extends Titled>(list: readonly Each[], at: number, word: string): Each[] {
  const one = list[at]!;
  const copy = { ...one, id: freeId(list, word), title: freeTitle(list, one.title) };
  return list.toSpliced(at + 1, 0, copy);
}

/** An id that none of the list has. */
export function freeId(list: readonly Pick<Titled, 'id'>[], word: string): string {
  let number = list.length + 1;
  while (list.some(({ id }) => id === `${word}-${number}`)) number += 1;
  return `${word}-${number}`;
}

/** The title with the first number that makes it a new one; as it is where nothing of the list has it. */
export function freeTitle(list: readonly Pick<Titled, 'title'>[], title: string): string {
  const isTaken = (other: string) => list.some((one) => one.title === other);
  if (!isTaken(title)) return title;
  let number = 2;
  const numbered = () => `${title.slice(0, MOST_OF_TITLE)} ${number}`;
  while (isTaken(numbered())) number += 1;
  return numbered();
}

/** Leaves room for the number. */
const MOST_OF_TITLE = 56;
