import { integrate } from '../numeric/gaussLegendre.ts';
import type { CompiledLoad } from './compileLoad.ts';

/** Share of the moved body (kg) in the mean of load and body over the way. */
export function meanBodyShare(compiled: CompiledLoad, movedBodyKg: number): number {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const bodyN = movedBodyKg * gravityMps2;
  const workNm = integrate((zM) => compiled.totalN(zM), bottomM, lockoutM, compiled.breaksM);
  return bodyN > 0 ? bodyN / (bodyN + workNm / (lockoutM - bottomM)) : 0;
}
