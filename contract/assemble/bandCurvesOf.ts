import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { BandCurves } from '#core/band/BandCurve.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { latestMeasuring } from '#core/band/latestMeasuring.ts';
import { recordById } from './recordById.ts';

/** Both loops of a pair. Where only one was read the other is taken to be alike. */
export interface PairCurves {
  a: BandCurves;
  b: BandCurves;
  /** Both sides were read. */
  bothRead: boolean;
}

type Readings = Pick<ClubRecords, 'bandPair' | 'bandReading'>;

/** The curves of a pair from its newest measuring up to `on`; fitted once for the same readings. */
export function bandCurvesOf(records: Readings, bandPairId: string, on: string): PairCurves {
  const pair = recordById(records, 'bandPair', bandPairId);
  const [a, b] = (['a', 'b'] as const).map((side) => readingsOf(records, bandPairId, side, on));
  const restAM = pair.restLengthAM;
  const restBM = pair.restLengthBM ?? restAM;
  if (a!.length === 0 && b!.length > 0) {
    const curves = fitted(restBM, pair.widthMm, b!);
    return { a: curves, b: curves, bothRead: false };
  }
  const curves = fitted(restAM, pair.widthMm, a!);
  return b!.length === 0
    ? { a: curves, b: curves, bothRead: false }
    : { a: curves, b: fitted(restBM, pair.widthMm, b!), bothRead: true };
}

function readingsOf(
  records: Readings,
  bandPairId: string,
  side: 'a' | 'b',
  on: string,
): RecordOf<'bandReading'>[] {
  const all = records.bandReading.filter(
    (reading) => reading.bandPairId === bandPairId && reading.side === side,
  );
  const upTo = all.filter(({ takenOn }) => takenOn <= on);
  // A best may be older than the first measuring: then the first one speaks for it.
  return upTo.length > 0 || all.length === 0 ? latestMeasuring(upTo) : all;
}

/** Fits by their inputs. Kept small: a club has tens of bands. */
const fits = new Map<string, BandCurves>();
const MOST_FITS = 1000;

function fitted(
  restLengthM: number,
  widthMm: number,
  readings: readonly RecordOf<'bandReading'>[],
): BandCurves {
  const numbers = readings.map(({ lengthM, forceN, direction }) => ({ lengthM, forceN, direction }));
  const key = JSON.stringify([restLengthM, widthMm, numbers]);
  const known = fits.get(key);
  if (known) return known;
  const curves = fitBand({ restLengthM, widthMm, readings: numbers });
  if (fits.size >= MOST_FITS) fits.clear();
  fits.set(key, curves);
  return curves;
}
