import type { BandCurve } from '#core/band/BandCurve.ts';
import { bandTensionInterval } from '#core/band/bandTension.ts';
import type { BandFitCurve } from '#web/charts/BandFit.tsx';
import type { SideState } from '#web/gear/state/pairState.ts';

const steps = 60;

/** The curves of one loop for its drawing: while lengthening, and while let back where that was read. */
export function branchCurves({ curves, restLengthM }: SideState, toM: number): BandFitCurve[] {
  const { loading, unloading } = curves;
  const drawn = unloading.direction === loading.direction ? [loading] : [loading, unloading];
  return drawn.map((curve) => ({ direction: curve.direction, points: pointsOf(curve, restLengthM, toM) }));
}

/** A curve at even steps, ending at its longest reading exactly, so that the dashes begin there. */
export function pointsOf(curve: BandCurve, fromM: number, toM: number) {
  const even = Array.from({ length: steps + 1 }, (_, i) => fromM + ((toM - fromM) * i) / steps);
  const lengths = [...even, curve.measuredToM].filter((m) => m >= fromM && m <= toM).sort((a, b) => a - b);
  return lengths.map((lengthM) => ({ lengthM, ...bandTensionInterval(curve, lengthM) }));
}
