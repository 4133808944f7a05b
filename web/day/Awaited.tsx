import { planOf } from '#contract/day/planOf.ts';
import type { Prescription } from '#contract/records/prescription.ts';
import { lacksLog } from '#reckon/day/lacksLog.ts';
import { useAwaited } from '#web/api/usePrescription.ts';

/** Says whose bests stand in because their log was still being worked out, and when it is worth solving again. */
export function Awaited({ prescription }: { prescription: Prescription }) {
  const plan = planOf(prescription);
  const waited = plan?.awaited ?? [];
  const still = useAwaited(prescription.dayId, waited.length > 0);
  if (plan === null || waited.length === 0) return null;
  const seats = plan.groups.flatMap(({ places }) => places);
  // A plan of a day that is past, or of other gear than now, is not told anew.
  const counts = !seats.some((seat) => waited.includes(seat.lifterId) && lacksLog(seat));
  const names = seats
    .filter(({ lifterId }, index, all) => waited.includes(lifterId) && isFirst(lifterId, index, all))
    .map(({ name }) => name);
  const whose = names.length === 1 ? names[0] : `${names[0]} and ${names.length - 1} more`;
  const goBy = names.length === 1 ? 'goes by the best' : 'go by their bests';
  const logs = names.length === 1 ? 'the log is' : 'their logs are';
  return still?.length === 0 ? (
    <p>
      <strong>
        What the log says of {whose} is worked out now
        {counts
          ? ', and speeds and chances count it: work the loads out again so that the bars do too.'
          : ': work the loads out again to use it.'}
      </strong>
    </p>
  ) : (
    <p className="quiet">
      {whose} {goBy} until {logs} worked out.
    </p>
  );
}

function isFirst(lifterId: string, index: number, all: readonly { lifterId: string }[]): boolean {
  return all.findIndex((place) => place.lifterId === lifterId) === index;
}
