import type { Method } from '#contract/records/method.ts';
import { freeId, freeTitle } from './titledList.ts';

/** The same as a method of the club's own, under an id and a title that no other has. */
export function ownCopy(method: Method, every: readonly Method[]): Method {
  return { ...method, id: freeId(every, 'own'), title: freeTitle(every, method.title), version: 1 };
}
