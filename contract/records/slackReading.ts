import type { ClubRecords, KindName, RecordOf } from './allKinds.ts';
import type { Fault } from './Fault.ts';
import type { BandPair, BandReadingRecord } from './gear.ts';
import type { ReaderWrites } from './ReaderWrites.ts';

/** Relaxed length of one loop of a pair (m); b is as long as a where it has no length of its own. */
export function restLengthM(pair: BandPair, side: 'a' | 'b'): number {
  return side === 'a' ? pair.restLengthAM : (pair.restLengthBM ?? pair.restLengthAM);
}

/** A loop no longer than at rest pulls nothing, so no scale can have shown a force there. */
export function isSlack(pair: BandPair, { side, lengthM }: BandReadingRecord): boolean {
  return lengthM <= restLengthM(pair, side);
}

/**
 * Why a record cannot stand beside the club's others: a reading of a slack loop, or a rest length that makes one of an
 * older reading. `before` is the record as it was; a pair whose rest lengths stay is not looked at again.
 */
export function slackFault(
  record: RecordOf<KindName>,
  before: RecordOf<KindName> | null,
  { bandPair, bandReading }: Pick<ClubRecords, 'bandPair' | 'bandReading'>,
  { lengthText = String }: ReaderWrites,
): Fault | null {
  // Of a new pair the sentence names the reading that came with it.
  if ('restLengthAM' in record) return before && faultOfPair(record, before, bandReading, lengthText);
  if (!('lengthM' in record && 'side' in record)) return null;
  const pair = bandPair.find(({ id }) => id === record.bandPairId);
  if (!pair || !isSlack(pair, record)) return null;
  const { side, lengthM } = record;
  const message = `lengthM is ${lengthText(lengthM)}; it must be more than ${lengthText(restLengthM(pair, side))}, the rest length of band ${side} of pair "${pair.label}".`;
  return { field: 'lengthM', message };
}

function faultOfPair(
  pair: BandPair,
  before: RecordOf<KindName>,
  readings: readonly BandReadingRecord[],
  lengthText: (lengthM: number) => string,
): Fault | null {
  for (const side of ['a', 'b'] as const) {
    const restM = restLengthM(pair, side);
    if ('restLengthAM' in before && restLengthM(before, side) === restM) continue;
    const lengthsM = readings
      .filter((reading) => reading.bandPairId === pair.id && reading.side === side)
      .map(({ lengthM }) => lengthM);
    const shortestM = Math.min(...lengthsM);
    if (restM < shortestM) continue;
    const field = side === 'b' && pair.restLengthBM !== null ? 'restLengthBM' : 'restLengthAM';
    const message = `${field} is ${lengthText(restM)}; it must be less than ${lengthText(shortestM)}, the shortest length that band ${side} was read at.`;
    return { field, message };
  }
  return null;
}
