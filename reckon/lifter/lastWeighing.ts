import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { BodyMass } from '#contract/records/lifters.ts';

/** A lifter's newest body mass of a day and before; null: none is on record. */
export function lastWeighing(
  { bodyMass }: Pick<ClubRecords, 'bodyMass'>,
  lifterId: string,
  on: string,
): BodyMass | null {
  return bodyMass
    .filter((one) => one.lifterId === lifterId && one.takenOn <= on)
    .reduce<BodyMass | null>((last, one) => (last && last.takenOn > one.takenOn ? last : one), null);
}
