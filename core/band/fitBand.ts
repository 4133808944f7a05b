import type { BandCurve, BandCurves, BandReading, Direction } from './BandCurve.ts';
import { bandPrior } from './bandPrior.ts';
import { fitForm } from './fitForm.ts';
import { fitLine } from './fitLine.ts';
import { lengthGroups } from './lengthGroups.ts';
import { readingFault } from './readingFault.ts';

/**
 * Force against length of one loop, for both branches, from what a scale showed.
 *
 * A branch with readings at three or more lengths gets the form with the least leave-one-out error (`fitForm`), one
 * with two lengths a straight line (`fitLine`), one with fewer the other branch's curve (see `direction`); where
 * neither branch has two lengths, the width alone speaks (`bandPrior`, `known: 'notMeasured'`).
 *
 * `restLengthM` is the relaxed loop end to end, `widthMm` is needed only for the prior. Readings at or below the rest
 * length with a force are refused by name (RangeError, see `readingFault`); with force 0 they say nothing new.
 */
export function fitBand(band: {
  restLengthM: number;
  widthMm?: number | undefined;
  readings: readonly BandReading[];
}): BandCurves {
  const fault = readingFault(band);
  if (fault) throw new RangeError(fault.message);
  const loading = fitBranch(band, 'loading');
  const unloading = fitBranch(band, 'unloading');
  return {
    loading: loading ?? unloading ?? priorFor(band, 'loading'),
    unloading: unloading ?? loading ?? priorFor(band, 'unloading'),
  };
}

function fitBranch(
  { restLengthM, readings }: { restLengthM: number; readings: readonly BandReading[] },
  direction: Direction,
): BandCurve | null {
  // Sorted, so that the order in which readings were taken cannot matter, down to the last bit.
  const branch = readings
    .filter((r) => r.direction === direction && r.lengthM > restLengthM)
    .sort((a, b) => a.lengthM - b.lengthM || a.forceN - b.forceN);
  const [shorter, longer, ...more] = lengthGroups(branch);
  if (!shorter || !longer) return null;
  return (more.length === 0 ? fitLine(restLengthM, shorter, longer) : null) ?? fitForm(restLengthM, branch);
}

function priorFor(
  {
    restLengthM,
    widthMm,
    readings,
  }: { restLengthM: number; widthMm?: number | undefined; readings: readonly BandReading[] },
  direction: Direction,
): BandCurve {
  if (widthMm === undefined) {
    throw new RangeError(
      `A band with readings at fewer than two lengths (${readings.length} given) needs its width in mm.`,
    );
  }
  return bandPrior(restLengthM, widthMm, direction);
}
