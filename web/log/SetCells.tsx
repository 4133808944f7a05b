import { useMemo } from 'react';
import { Link } from 'wouter';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { endsOfSet } from '#reckon/log/endsOfSet.ts';
import { expectedOfSet } from '#reckon/log/expectedOfSet.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEstimate } from '#web/api/useEstimates.ts';
import { SpeedSpark } from '#web/charts/SpeedSpark.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { meanOfSpeeds } from '#web/setup/speedWords.ts';

/** The setup of a set, which leads to the same setup of that lifter over the weeks. */
export function SetupLink({ set, children }: { set: LoggedSet; children: string }) {
  const address = `~/lifters/${set.lifterId}/weeks?${new URLSearchParams({ set: set.id })}`;
  return <Link href={address}>{children}</Link>;
}

/** The true load of a set at the bottom and at lockout. */
export function LoadCell({ set }: { set: LoggedSet }) {
  const club = useClub();
  const { mass } = useUnits();
  const ends = useMemo(() => endsOfSet(club, set), [club, set]);
  if (ends === null) return <span className="small quiet set-load">load no longer known</span>;
  const [bottom, lockout] = [oneDecimal(ends.bottomKg, mass), oneDecimal(ends.lockoutKg, mass)];
  return (
    <span className="set-load">
      <span>
        <Known value={bottom} unit={mass} known={ends.known} /> <span className="small quiet">bottom</span>
      </span>
      <span>
        <Known value={lockout} unit={mass} known={ends.known} /> <span className="small quiet">lockout</span>
      </span>
    </span>
  );
}

/** Speeds of alike sets as a tiny picture and in the middle, beside what the log expects of a rested first rep. */
export function SpeedCell({ sets }: { sets: readonly LoggedSet[] }) {
  const club = useClub();
  const [first] = sets;
  const measuredMps = meanOfSpeeds(sets);
  const firstMps = first?.meanSpeedsMps[0];
  const estimate = useEstimate(first?.lifterId ?? '', first?.lift ?? 'squat', measuredMps !== null);
  const expectedMps = useMemo(
    () => (first === undefined || estimate === undefined ? null : expectedOfSet(club, first, estimate)),
    [club, first, estimate],
  );
  if (measuredMps === null) return null;
  return (
    <span className="set-speed">
      <SpeedSpark sets={sets.map(({ meanSpeedsMps }) => meanSpeedsMps)} expectedMps={expectedMps} />
      <span>
        {measuredMps.toFixed(2)} m/s
        {firstMps !== undefined && expectedMps !== null && (
          <span className="small quiet">
            , first {firstMps.toFixed(2)}, expected{' '}
            {expectedMps === 0 ? 'not to go up' : expectedMps.toFixed(2)}
          </span>
        )}
      </span>
    </span>
  );
}
