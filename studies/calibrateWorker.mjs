/** Entry of the threads of the calibration study: TypeScript made readable first, then one lifter a call. */
import { register } from 'tsx/esm/api';

register();
const { calibrateOne } = await import('./calibrateOne.ts');

export default function calibrate({ seed, index }) {
  return calibrateOne(seed, index);
}
