import { type GivenSet, givenSet } from '#contract/records/loggedSet.ts';
import type { FileSet } from '../ClubStore.ts';
import { squatSet } from './squatSet.ts';

/** Sets of the small club's lifter as a file brings them, one on each of 600 days from a day on, then a second one. */
export function fileSets(count: number, from = '2024-01-01'): FileSet[] {
  return Array.from({ length: count }, (_, i) => {
    const doneOn = new Date(Date.parse(from) + (i % 600) * 86_400_000).toISOString().slice(0, 10);
    const { id: _id, ...set }: GivenSet = givenSet.parse(squatSet({ doneOn }));
    return { ...set, order: 1 + Math.floor(i / 600) };
  });
}
