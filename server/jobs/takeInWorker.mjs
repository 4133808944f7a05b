/** Entry of the thread that goes on from estimates: TypeScript made readable first, then the work, which is contract's. */
import { deserialize } from 'node:v8';
import { register } from 'tsx/esm/api';

register();
const { takeNewest } = await import('#reckon/strength/takeNewest.ts');
const { believeAnew: believe } = await import('#reckon/strength/believeAnew.ts');
const { newestKept } = await import('./newestKept.ts');

/** Some megabyte each: a club of forty in three lifts. */
const known = newestKept(130);

export function remember({ key, version, state }) {
  known.set(key, { version, remembered: deserialize(state) });
}

export function takeIn({ key, version, asked }) {
  return goneOn(key, version, (remembered) => takeNewest(remembered, asked));
}

export function believeAnew({ key, version, asked }) {
  return goneOn(key, version, (remembered) => believe(remembered, asked))?.told ?? null;
}

/** What comes of the version that is remembered, which is remembered in its place; null where it is not, or nothing comes of it. */
function goneOn(key, version, work) {
  const one = known.get(key);
  const answer = one?.version === version ? work(one.remembered) : null;
  if (answer === null) return null;
  const { remembered, ...rest } = answer;
  known.set(key, { version, remembered });
  return rest;
}
