import type { Group, Place } from '#contract/records/day.ts';
import type { Prescription } from '#contract/records/prescription.ts';
export function LifterPicture(_: {
  prescription: Prescription | null;
  group: Group;
  place: Place;
  name: string;
}) {
  return null;
}
