import { deserialize } from 'node:v8';
import { type AnewAsked, believeAnew as anew, type BelievedAnew } from '#reckon/strength/believeAnew.ts';
import { type NewestAsked, type NewestTaken, takeNewest } from '#reckon/strength/takeNewest.ts';
import type { Remembered } from '#reckon/strength/weighAndRemember.ts';
import { newestKept } from '#server/jobs/newestKept.ts';
import { rememberedCount } from './rememberedCount.ts';

/** Which estimate is gone on from: its lift, and a number of its own. */
export interface Version {
  key: string;
  version: number;
}

/** What it takes to go on from an estimate, as bytes: it travels from the thread that weighed to the one that remembers. */
export interface RememberedState extends Version {
  state: Uint8Array;
}

const known = newestKept<{ version: number; remembered: Remembered }>(rememberedCount);

/** Keeps a state in the thread where this runs. */
export function remember({ key, version, state }: RememberedState): void {
  known.set(key, { version, remembered: deserialize(state) as Remembered });
}

/** The newest sets taken into what is remembered; null where that takes the whole log or nothing is remembered. */
export function takeIn({
  asked,
  ...from
}: Version & { asked: NewestAsked }): Omit<NewestTaken, 'remembered'> | null {
  return goneOn(from, (remembered) => takeNewest(remembered, asked));
}

/** What is remembered under another prior; null likewise. */
export function believeAnew({ asked, ...from }: Version & { asked: AnewAsked }): BelievedAnew | null {
  return goneOn(from, (remembered) => anew(remembered, asked))?.told ?? null;
}

/** What comes of the version that is remembered, which is remembered in its place; null where it is not, or nothing comes of it. */
function goneOn<Gone extends { remembered: Remembered }>(
  { key, version }: Version,
  work: (remembered: Remembered) => Gone | null,
): Omit<Gone, 'remembered'> | null {
  const one = known.get(key);
  const answer = one?.version === version ? work(one.remembered) : null;
  if (answer === null) return null;
  const { remembered, ...rest } = answer;
  known.set(key, { version, remembered });
  return rest;
}
