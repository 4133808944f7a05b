/** Entry of the threads that estimate a whole club: TypeScript made readable first; logs are simulated once and kept. */
import { register } from 'tsx/esm/api';

register();
const { estimateLog } = await import('../studies/longLog.ts');
const { clubLog } = await import('../studies/clubLog.ts');

export default function work({ lifter, lift, sets, simulateOnly }) {
  const log = clubLog(lifter, lift, sets);
  return simulateOnly ? 0 : estimateLog(log).effective;
}
