import { planOf } from '#contract/day/planOf.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { useMoved } from '#web/api/usePrescription.ts';

/** Says whose strength the log has moved since the day was worked out, as long as it has not begun. */
export function Moved({ prescription }: { prescription: Prescription }) {
  const moved = useMoved(prescription.dayId);
  const places = planOf(prescription)?.groups.flatMap((group) => group.places) ?? [];
  const names = new Map(places.map(({ lifterId, name }) => [lifterId, name]));
  const [first, ...more] = moved.flatMap((id) => names.get(id) ?? []);
  if (first === undefined) return null;
  const whose = more.length === 0 ? first : `${first} and ${more.length} more`;
  return (
    <p>
      <strong>
        Sets logged since have moved the strength of {whose} by more than 1 %: work the loads out again to use
        it.
      </strong>
    </p>
  );
}
