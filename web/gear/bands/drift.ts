import type { BandCurve } from '#core/band/BandCurve.ts';
import { bandTension } from '#core/band/bandTension.ts';
import { fitBand } from '#core/band/fitBand.ts';
import type { SideState } from '#web/gear/state/pairState.ts';

/** One measuring of a loop: its date and what the loop pulled at a length that every measuring reached. */
export interface Measuring {
  takenOn: string;
  readings: number;
  curve: BandCurve;
  pullN: number;
  /** Against the measuring before; null for the first. */
  change: number | null;
}

/** The measurings of a loop with two lengths or more, oldest first, compared at one length. */
export function drift({ restLengthM, everything }: SideState): { atM: number; measurings: Measuring[] } {
  const sound = everything.filter(({ lengthM }) => lengthM > restLengthM);
  const dates = [...new Set(sound.map(({ takenOn }) => takenOn))].sort();
  const fitted = dates.flatMap((takenOn) => {
    const readings = sound.filter((r) => r.takenOn === takenOn && r.direction === 'loading');
    if (new Set(readings.map((r) => r.lengthM)).size < 2) return [];
    return [{ takenOn, readings: readings.length, curve: fitBand({ restLengthM, readings }).loading }];
  });
  const atM = Math.min(2 * restLengthM, ...fitted.map(({ curve }) => curve.measuredToM));
  const pulls = fitted.map(({ curve }) => bandTension(curve, atM));
  return {
    atM,
    measurings: fitted.map((measuring, i) => {
      const pullN = pulls[i] ?? 0;
      const before = pulls[i - 1];
      return { ...measuring, pullN, change: before === undefined ? null : pullN / before - 1 };
    }),
  };
}
