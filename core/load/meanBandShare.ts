import { integrate } from '../numeric/gaussLegendre.ts';
import type { Share } from '../numeric/quantity.ts';
import type { CompiledLoad } from './compileLoad.ts';
import { loadWorkNm } from './loadWorkNm.ts';

/** Share of the mean load that bands carry; nought where nothing is carried. */
export function meanBandShare(compiled: CompiledLoad): Share {
  const { bottomM, lockoutM } = compiled.load;
  const bandNm = integrate((zM) => compiled.bandN(zM), bottomM, lockoutM, compiled.breaksM);
  const workNm = loadWorkNm(compiled);
  return workNm > 0 ? bandNm / workNm : 0;
}
