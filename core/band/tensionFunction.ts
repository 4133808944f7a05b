import type { BandCurve } from './BandCurve.ts';
import { bandForm } from './bandForms.ts';
import { lineForceN } from './lineForceN.ts';
import { yeoh } from './yeoh.ts';

/**
 * Force (N) of one loop by its length end to end (m), made ready once for many lengths: the integrator's hot loop
 * calls what this returns. 0 up to the rest length, never negative.
 */
export function tensionFunction(curve: BandCurve): (lengthM: number) => number {
  const { model, parameters, restLengthM } = curve;
  if (model === 'line') {
    return (lengthM) => (lengthM > restLengthM ? lineForceN(curve, lengthM) : 0);
  }
  const force = (model === 'prior' ? yeoh : bandForm(model)).force(parameters);
  return (lengthM) => (lengthM > restLengthM ? Math.max(force(lengthM / restLengthM), 0) : 0);
}
