import type { LoggedSet } from '#contract/records/loggedSet.ts';

/** The one place where all of these sets were done; empty where it was not written down or differs. */
export function sharedPlace(sets: readonly Pick<LoggedSet, 'place'>[]): string {
  const [first, ...others] = sets;
  return first !== undefined && others.every(({ place }) => place === first.place) ? first.place : '';
}
