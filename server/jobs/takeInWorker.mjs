/** Entry of the thread that takes new sets in: TypeScript made readable first, then the work, which is contract's. */
import { deserialize } from 'node:v8';
import { register } from 'tsx/esm/api';

register();
const { takeNewest } = await import('#contract/estimate/takeNewest.ts');
const { newestKept } = await import('./newestKept.ts');

/** Some megabytes each: a club of twenty in three lifts. */
const known = newestKept(60);

export function remember({ key, version, state }) {
  known.set(key, { version, remembered: deserialize(state) });
}

export function takeIn({ key, version, asked }) {
  const one = known.get(key);
  const answer = one?.version === version ? takeNewest(one.remembered, asked) : null;
  if (answer === null) return null;
  const { remembered, ...rest } = answer;
  known.set(key, { version, remembered });
  return rest;
}
