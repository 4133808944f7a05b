import { integrate } from '../numeric/gaussLegendre.ts';
import type { CompiledLoad } from './compileLoad.ts';

/** The load integrated over the way from bottom to lockout (N m): over the way it is the mean load. */
export function loadWorkNm({ load, breaksM, totalN }: CompiledLoad): number {
  return integrate(totalN, load.bottomM, load.lockoutM, breaksM);
}
