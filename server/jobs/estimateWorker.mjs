/** Entry of a thread that estimates strength: TypeScript made readable first, then the work, which is contract's. */
import { serialize } from 'node:v8';
import { register } from 'tsx/esm/api';

register();
const { estimateLift } = await import('#reckon/strength/estimateLift.ts');
const { weighAndRemember } = await import('#reckon/strength/weighAndRemember.ts');
const { liftCapacity } = await import('#reckon/strength/liftCapacity.ts');

export default function estimate({ records, log, of, prior }) {
  return estimateLift(records, log, of, prior);
}

export function weigh(asked) {
  const weighed = weighAndRemember(asked);
  return weighed && { estimate: weighed.estimate, state: serialize(weighed.remembered) };
}

export function followCapacity({ records, log, estimate }) {
  return liftCapacity(records, log, estimate);
}
