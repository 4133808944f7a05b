/** Entry of the threads that estimate a whole club: TypeScript made readable first; logs are simulated once and kept. */
import { register } from 'tsx/esm/api';

register();
const { estimateLog, longLog } = await import('../studies/longLog.ts');

export default function work({ seed, lift, sets, simulateOnly }) {
  const log = longLog(seed, lift, sets);
  return simulateOnly ? 0 : estimateLog(log).effective;
}
