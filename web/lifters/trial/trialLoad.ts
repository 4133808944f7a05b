import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Setup } from '#contract/records/lift.ts';
import type { BandCurves } from '#core/band/BandCurve.ts';
import { fitBand } from '#core/band/fitBand.ts';
import { latestMeasuring } from '#core/band/latestMeasuring.ts';
import type { Load } from '#core/load/Load.ts';
import { localGravity, STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import type { HungBand, RiggedBand } from '#core/rig/Rig.ts';

/** Gravity where the club is, or standard gravity where it has not said. */
export function clubGravity(club: ClubRecords): number {
  const [settings] = club.club;
  if (!settings || settings.latitudeDeg === null || settings.heightAboveSeaM === null)
    return STANDARD_GRAVITY_MPS2;
  return localGravity(settings.latitudeDeg, settings.heightAboveSeaM);
}

/** A setup as the core wants it, between two heights. */
export function trialLoad(
  club: ClubRecords,
  setup: Pick<Setup, 'barKg' | 'bands' | 'chains'>,
  heights: { bottomM: number; lockoutM: number },
): Load {
  const hung = setup.bands.flatMap((band) => hungBand(club, band.bandPairId, band.hookupId) ?? []);
  return {
    barKg: setup.barKg,
    bands: setup.bands
      .filter((band) => hungBand(club, band.bandPairId, band.hookupId) === null)
      .flatMap((band) => riggedBands(club, band.bandPairId, band.hookupId)),
    hungBands: hung,
    chains: setup.chains.flatMap(({ chainPairId, pairs }) => {
      const kind = club.chainPair.find((chain) => chain.id === chainPairId);
      return kind ? [{ ...kind, count: 2 * pairs }] : [];
    }),
    bottomM: heights.bottomM,
    lockoutM: heights.lockoutM,
    gravityMps2: clubGravity(club),
    path: [],
  };
}

/** Both loops of a pair in a hookup, each with its own curve. */
export function riggedBands(club: ClubRecords, bandPairId: string, hookupId: string): RiggedBand[] {
  const hookup = club.hookup.find((candidate) => candidate.id === hookupId);
  const anchor = club.anchor.find((candidate) => candidate.id === hookup?.anchorId);
  const curves = pairCurves(club, bandPairId);
  if (!hookup || !anchor || curves === null) return [];
  const way = hookup.way === 'choked' ? { way: hookup.way, spentM: hookup.spentM ?? 0 } : { way: hookup.way };
  return curves.map((side) => ({ curves: side, hookup: way, anchor, count: 1 }));
}

/** The pair's vertical pull where it was read on a scale in this hookup at two heights or more. */
function hungBand(club: ClubRecords, bandPairId: string, hookupId: string): HungBand | null {
  const verticalAt = club.scaleReading
    .filter((reading) => reading.bandPairId === bandPairId && reading.hookupId === hookupId)
    .map(({ barHeightM, pairForceN }) => ({ zM: barHeightM, forceN: pairForceN }));
  return verticalAt.length < 2 ? null : { verticalAt, count: 1 };
}

const fitted = new WeakMap<ClubRecords, Map<string, [BandCurves, BandCurves]>>();

/** Curves of loops a and b; fitted once for each state of the club. */
function pairCurves(club: ClubRecords, bandPairId: string): [BandCurves, BandCurves] | null {
  const pair = club.bandPair.find((candidate) => candidate.id === bandPairId);
  if (pair === undefined) return null;
  const known = fitted.get(club) ?? new Map<string, [BandCurves, BandCurves]>();
  fitted.set(club, known);
  const before = known.get(bandPairId);
  if (before) return before;
  const side = (name: 'a' | 'b', restLengthM: number) => {
    const readings = club.bandReading.filter(
      (r) => r.bandPairId === bandPairId && r.side === name && r.lengthM > restLengthM,
    );
    return fitBand({ restLengthM, widthMm: pair.widthMm, readings: latestMeasuring(readings) });
  };
  const a = side('a', pair.restLengthAM);
  const b = side('b', pair.restLengthBM ?? pair.restLengthAM);
  // A loop nobody has measured is taken to be like its twin.
  const curves: [BandCurves, BandCurves] = [
    a.loading.known === 'measured' || b.loading.known !== 'measured' ? a : b,
    b.loading.known === 'measured' || a.loading.known !== 'measured' ? b : a,
  ];
  known.set(bandPairId, curves);
  return curves;
}
