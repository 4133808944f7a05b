import type { Trap } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LiftNoise } from '#core/evidence/liftNoise.ts';
import type { GymGain } from './gymGains.ts';
import type { HardLift } from './HardLift.ts';
import type { MeetLift, MeetStep } from './meetLifts.ts';

export type TrapRecords = Pick<ClubRecords, 'lifter' | 'bandPair' | 'bandReading' | 'scaleReading'>;

export function regressionToTheMean(noise: LiftNoise, reliability: number | null): Trap {
  const { share, known, pairs } = noise;
  return {
    code: 'regressionToTheMean',
    reliability,
    noiseShare: share,
    noiseKnown: known,
    noisePairs: pairs,
  };
}

/** Lifters who trained hard in a lift and never came to a second meet in it, and how many of them have left. */
export function survivorsOnly(
  { lifter }: TrapRecords,
  lifts: readonly HardLift[],
  meets: readonly MeetLift[],
): Trap {
  const counts = new Map<string, number>();
  for (const { lifterId, lift } of meets)
    counts.set(`${lifterId} ${lift}`, (counts.get(`${lifterId} ${lift}`) ?? 0) + 1);
  const twice = new Set([...counts].flatMap(([key, count]) => (count > 1 ? [key.split(' ')[0]!] : [])));
  const trained = new Set(lifts.map(({ lifterId }) => lifterId));
  const leftOut = lifter.filter(({ id }) => trained.has(id) && !twice.has(id));
  return {
    code: 'survivorsOnly',
    leftOut: leftOut.length,
    ofThemLeft: leftOut.filter(({ leftOn }) => leftOn !== null).length,
  };
}

export function tooFewMeets(steps: readonly { lifterId: string }[]): Trap {
  return {
    code: 'tooFewMeets',
    lifters: new Set(steps.map(({ lifterId }) => lifterId)).size,
    gains: steps.length,
  };
}

export function changedEquipment(changed: readonly MeetStep[]): Trap {
  return { code: 'changedEquipment', dropped: changed.length };
}

/** Gains whose bands were read anew, or hung new, between their two lifts: part of such a gain may be the gear's. */
export function gearRemeasured(records: TrapRecords, gains: readonly GymGain[]): Trap {
  const changes = [
    ...records.bandPair.map(({ id, installedOn }) => ({ bandPairId: id, on: installedOn })),
    ...[...records.bandReading, ...records.scaleReading].map(({ bandPairId, takenOn }) => ({
      bandPairId,
      on: takenOn,
    })),
  ];
  const isTouched = ({ from, to }: GymGain) =>
    changes.some(
      ({ bandPairId, on }) =>
        on !== null &&
        on > from.doneOn &&
        on <= to.doneOn &&
        from.setup.bands.some((band) => band.bandPairId === bandPairId),
    );
  return { code: 'gearRemeasured', touched: gains.filter(isTouched).length, of: gains.length };
}
