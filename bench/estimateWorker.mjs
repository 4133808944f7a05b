/** Entry of the threads that estimate a whole club: TypeScript made readable first, then the work. */
import { register } from 'tsx/esm/api';

register();
const { estimateLog } = await import('../studies/longLog.ts');

export default function work(log) {
  return estimateLog(log).effective;
}
