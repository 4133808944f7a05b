/** Entry of a thread that estimates strength: TypeScript made readable first, then the work, which is contract's. */
import { register } from 'tsx/esm/api';

register();
const { estimateLift } = await import('#contract/estimate/estimateLift.ts');

export default function estimate({ records, log, of, prior }) {
  return estimateLift(records, log, of, prior);
}
