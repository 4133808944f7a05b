import { expect, it } from 'vitest';
import { dormandPrinceStep, type MotionState } from './dormandPrince.ts';

/** Harmonic motion from z = 1 over half a turn in `steps` equal steps: the error against -1. */
function errorOf(steps: number): number {
  let state: MotionState = { t: 0, z: 1, v: 0, a: -1 };
  for (let i = 0; i < steps; i++) {
    const out: MotionState = { t: 0, z: 0, v: 0, a: 0 };
    dormandPrinceStep((_t, z) => -z, state, Math.PI / steps, out);
    state = out;
  }
  return Math.hypot(state.z + 1, state.v);
}

it('halving the step divides the error by two to the fifth', () => {
  for (const steps of [8, 16, 32]) {
    const order = Math.log2(errorOf(steps) / errorOf(2 * steps));
    expect(order).toBeGreaterThan(4.6);
    expect(order).toBeLessThan(5.6);
  }
});
