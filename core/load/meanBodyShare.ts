import type { Kg, Share } from '../numeric/quantity.ts';
import type { CompiledLoad } from './compileLoad.ts';
import { loadWorkNm } from './loadWorkNm.ts';

/** Share of the moved body (kg) in the mean of load and body over the way. */
export function meanBodyShare(compiled: CompiledLoad, movedBodyKg: Kg): Share {
  const { bottomM, lockoutM, gravityMps2 } = compiled.load;
  const bodyWorkNm = movedBodyKg * gravityMps2 * (lockoutM - bottomM);
  return bodyWorkNm > 0 ? bodyWorkNm / (bodyWorkNm + loadWorkNm(compiled)) : 0;
}
