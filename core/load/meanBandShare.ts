import { integrate } from '../numeric/gaussLegendre.ts';
import type { CompiledLoad } from './compileLoad.ts';
import { loadWorkNm } from './loadWorkNm.ts';

/** Share of the mean load that bands carry; nought where nothing is carried. */
export function meanBandShare(compiled: CompiledLoad): number {
  const { bottomM, lockoutM } = compiled.load;
  const bandNm = integrate((zM) => compiled.bandN(zM), bottomM, lockoutM, compiled.breaksM);
  const workNm = loadWorkNm(compiled);
  return workNm > 0 ? bandNm / workNm : 0;
}
