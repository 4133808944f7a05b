/** Entry of the thread that takes new sets in: TypeScript made readable first, then the work, which is contract's. */
import { deserialize } from 'node:v8';
import { register } from 'tsx/esm/api';

register();
const { takeNewest } = await import('#contract/estimate/takeNewest.ts');

/** Some megabytes each: a club of twenty in three lifts. The one not asked for the longest goes first. */
const most = 60;
const known = new Map();

export function remember({ key, version, state }) {
  keep(key, { version, remembered: deserialize(state) });
}

export function takeIn({ key, version, asked }) {
  const one = known.get(key);
  const answer = one?.version === version ? takeNewest(one.remembered, asked) : null;
  if (answer === null) return null;
  const { remembered, ...rest } = answer;
  keep(key, { version, remembered });
  return rest;
}

function keep(key, one) {
  known.delete(key);
  known.set(key, one);
  if (known.size > most) known.delete(known.keys().next().value);
}
