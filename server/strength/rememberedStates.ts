import { deserialize, serialize } from 'node:v8';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
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

/** As bytes, packed: half of what they are, and some thirtieth of a second with the least effort. */
export function packed(remembered: Remembered): Uint8Array {
  return deflateRawSync(serialize(remembered), { level: 1 });
}

const known = newestKept<{ version: number; remembered: Remembered }>(rememberedCount);

/** Keeps a state in the thread where this runs. */
export function remember({ key, version, state }: RememberedState): void {
  known.set(key, { version, remembered: deserialize(inflateRawSync(state)) as Remembered });
}

/** The newest sets taken into what is remembered; null where that takes the whole log or nothing is remembered. */
export function takeIn({
  asked,
  ...from
}: Version & { asked: NewestAsked }): Omit<NewestTaken, 'remembered'> | null {
  return goneOn(from, (remembered) => takeNewest(remembered, asked));
}

/** What is remembered for another day or under another prior, and as it then is where that is wanted; null likewise. */
export function believeAnew({
  asked,
  withState,
  ...from
}: Version & { asked: AnewAsked; withState: boolean }): {
  told: BelievedAnew;
  state: Uint8Array | null;
} | null {
  return goneOn(from, (before) => {
    const answer = anew(before, asked);
    return answer && { ...answer, state: withState ? packed(answer.remembered) : null };
  });
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
