import { randomUUID } from 'node:crypto';

const marks = new WeakMap<object, string>();

/** By what name others rest on an answer: the same for the same object, in this run of the server and, where it was kept, in later ones. */
export function markOf(answer: object): string {
  const mark = marks.get(answer) ?? randomUUID();
  marks.set(answer, mark);
  return mark;
}

/** Gives an answer that was kept the mark again that it had. */
export function markAs(answer: object, mark: string): void {
  marks.set(answer, mark);
}

/** What something rests on as it can be written down: answers by their marks. */
export function writtenBasis(basis: readonly unknown[]): unknown[] {
  return basis.map((part) => (typeof part === 'object' && part !== null ? markOf(part) : part));
}
