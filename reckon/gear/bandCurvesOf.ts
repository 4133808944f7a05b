import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { isSlack, restLengthM } from '#contract/records/slackReading.ts';
import type { BandCurves } from '#core/band/BandCurve.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { latestMeasuring } from '#core/band/latestMeasuring.ts';
import { CannotAssemble } from './CannotAssemble.ts';
import { recordById } from './recordById.ts';

/** Both loops of a pair. Where only one was read well enough for a curve the other is taken to be alike. */
export interface PairCurves {
  a: BandCurves;
  b: BandCurves;
  /** Each side has a curve from its own readings. */
  bothRead: boolean;
}

type Readings = Pick<ClubRecords, 'bandPair' | 'bandReading'>;

/** The curves of a pair from its newest measuring up to `on`; fitted once for the same readings. */
export function bandCurvesOf(records: Readings, bandPairId: string, on: string): PairCurves {
  const pair = recordById(records, 'bandPair', bandPairId);
  const [a, b] = (['a', 'b'] as const).map((side) => {
    const readings = readingsOf(records, bandPairId, side, on);
    checkTaut(pair, readings);
    return fitted(restLengthM(pair, side), pair.widthMm, readings);
  }) as [BandCurves, BandCurves];
  if (isRead(a) && isRead(b)) return { a, b, bothRead: true };
  const lent = isRead(b) ? b : a;
  return { a: lent, b: lent, bothRead: false };
}

function isRead({ loading }: BandCurves): boolean {
  return loading.known === 'measured';
}

/** The store lets no such reading in; a club of before, or a document from elsewhere, may still hold one. */
function checkTaut(pair: RecordOf<'bandPair'>, readings: readonly RecordOf<'bandReading'>[]): void {
  const slack = readings.find((reading) => isSlack(pair, reading));
  if (!slack) return;
  const { side, takenOn, lengthM } = slack;
  throw new CannotAssemble(
    `Band ${side} of pair "${pair.label}" was read at ${lengthM} m on ${takenOn}, no longer than its ${restLengthM(pair, side)} m at rest: remove that reading or mend the rest length.`,
  );
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
