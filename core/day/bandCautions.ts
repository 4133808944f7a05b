import { pairMismatch } from '#core/band/pairMismatch.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import type { Caution } from './Caution.ts';
import type { GearSet, PairHookup, RackGear } from './Gear.ts';
import type { Travel } from './gearPull.ts';

/** What the club allows of its bands. */
export interface BandLimits {
  /** Stretch ratio beyond which a band is flagged. */
  safeStretch: number;
  /** Two bands of a pair may differ by this share. */
  mismatchShare: number;
}

/** What to know about the bands of a set over this travel: each pair's own cautions, then that of bands under load. */
export function bandCautions(gear: RackGear, set: GearSet, travel: Travel, limits: BandLimits): Caution[] {
  const cautions = set.hookups.flatMap((index) => pairCautions(gear.hookups[index]!, travel, limits));
  return set.hookups.length > 0 ? [...cautions, { code: 'bandsUnderLoad' }] : cautions;
}

function pairCautions(
  { pairId, rigged, measured }: PairHookup,
  travel: Travel,
  limits: BandLimits,
): Caution[] {
  const { bottomM, lockoutM, path } = travel;
  const pulls = rigged.map((band) => bandPull(band, path, bottomM, lockoutM));
  const ends = [bottomM, lockoutM];
  const stretch = Math.max(1, ...pulls.flatMap((pull) => ends.map((zM) => pull.stretch(zM))));
  const cautions: Caution[] = [];
  if (stretch > limits.safeStretch) {
    cautions.push({ code: 'overstretched', pairId, stretch, safeStretch: limits.safeStretch });
  }
  // Over all lengths that both were read at: at one height where a loop is barely taut, a millimetre looks like a misfit.
  const [a, b] = rigged.map(({ curves }) => curves.loading);
  const mismatch = a && b ? pairMismatch(a, b, limits.mismatchShare) : null;
  if (mismatch?.flagged) {
    const share = Math.abs(mismatch.share);
    cautions.push({ code: 'pairMismatch', pairId, share, allowedShare: limits.mismatchShare });
  }
  if (measured !== null) return cautions;
  if (rigged.some(({ curves }) => curves.loading.known === 'notMeasured')) {
    cautions.push({ code: 'notMeasured', pairId });
  } else if (pulls.some((pull) => ends.some((zM) => pull.extrapolated(zM)))) {
    cautions.push({ code: 'extrapolated', pairId, stretch });
  }
  return cautions;
}
