import type { BandReps } from '#contract/log/BandReps.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import type { BandPair, BandReadingRecord } from '#contract/records/gear.ts';
import type { BandCurves } from '#core/band/BandCurve.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { latestMeasuring } from '#core/band/latestMeasuring.ts';
import { type PairMismatch, pairMismatch } from '#core/band/pairMismatch.ts';
import { readingFault } from '#core/band/readingFault.ts';
import { type WearFinding, wear } from '#core/band/wear.ts';
import { cyclesSince } from './cyclesSince.ts';

/** One loop of a pair: what was read of it, and what follows. */
export interface SideState {
  side: 'a' | 'b';
  restLengthM: number;
  /** Every reading ever taken, in the order of dates, then of lengths. */
  everything: readonly BandReadingRecord[];
  /** The readings that its curve of today rests on. */
  readings: readonly BandReadingRecord[];
  /** Those, and single looks taken since: checks that do not yet make a measuring. */
  recent: readonly BandReadingRecord[];
  curves: BandCurves;
  /** Longest length of today's readings; null where there are none. */
  readToM: number | null;
  findings: readonly WearFinding[];
  /** One sentence where a reading cannot be, and the pair can therefore not be worked out; null otherwise. */
  fault: string | null;
}

export interface PairState {
  pair: BandPair;
  sides: readonly [SideState, SideState];
  mismatch: PairMismatch;
  /** `both` loops rest on readings at two lengths or more, only one of them, or `none`. */
  measured: 'both' | 'a' | 'b' | 'none';
}

/** A pair of bands as the club knows it today. */
export function pairState(
  records: ClubRecords,
  club: Club,
  pair: BandPair,
  today: string,
  bandReps: readonly BandReps[] = [],
): PairState {
  const readings = records.bandReading.filter(({ bandPairId }) => bandPairId === pair.id);
  const sides = [
    sideState(club, pair, 'a', readings, bandReps, today),
    sideState(club, pair, 'b', readings, bandReps, today),
  ] as const;
  const [a, b] = sides.map(({ curves }) => curves.loading.known === 'measured');
  return {
    pair,
    sides,
    mismatch: pairMismatch(sides[0].curves.loading, sides[1].curves.loading, club.pairMismatchShare),
    measured: a && b ? 'both' : a ? 'a' : b ? 'b' : 'none',
  };
}

function sideState(
  club: Club,
  pair: BandPair,
  side: 'a' | 'b',
  ofPair: readonly BandReadingRecord[],
  bandReps: readonly BandReps[],
  today: string,
): SideState {
  const restLengthM = side === 'a' ? pair.restLengthAM : (pair.restLengthBM ?? pair.restLengthAM);
  const everything = ofPair
    .filter((reading) => reading.side === side)
    .toSorted((x, y) => x.takenOn.localeCompare(y.takenOn) || x.lengthM - y.lengthM);
  const readings = latestMeasuring(everything);
  const measuredFrom = readings.map(({ takenOn }) => takenOn).toSorted()[0] ?? '';
  const sound = everything.filter(({ lengthM }) => lengthM > restLengthM);
  return {
    side,
    restLengthM,
    everything,
    readings,
    recent: everything.filter(({ takenOn }) => takenOn >= measuredFrom),
    curves: fitBand({ restLengthM, widthMm: pair.widthMm, readings: latestMeasuring(sound) }),
    fault: readingFault({ restLengthM, readings })?.message ?? null,
    readToM: readings.length > 0 ? Math.max(...readings.map(({ lengthM }) => lengthM)) : null,
    findings: wear(
      {
        restLengthM,
        widthMm: pair.widthMm,
        readings: sound,
        cyclesSinceMeasured: cyclesSince(pair, readings.at(-1)?.takenOn, bandReps, today),
      },
      {
        afterDays: club.remeasureAfterDays,
        afterCycles: club.remeasureAfterCycles,
        driftShare: club.pairMismatchShare,
        safeStretchRatio: club.safeStretchRatio,
      },
      today,
    ),
  };
}
