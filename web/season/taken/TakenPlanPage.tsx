import { Link, useLocation } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { useTakenSeason, useTakePlan } from '#web/api/useSeason.ts';
import { SeasonPlanPart } from '../SeasonPlanPart.tsx';
import { viewOfSeason } from '../viewOfSeason.ts';
import { TakenWhen } from './TakenWhen.tsx';

/** A plan as it was taken, to look at and to take again. */
export function TakenPlanPage(props: { seasonId: string; number: number; today: string; isLast: boolean }) {
  const { seasonId, number, today, isLast } = props;
  const club = useClub();
  const [, go] = useLocation();
  const { data, error } = useTakenSeason(seasonId, number);
  const take = useTakePlan(seasonId);
  if (error) return <p className="stop">The plan could not be fetched: {error.message}</p>;
  if (!data) return <p className="quiet">Fetching the plan.</p>;
  return (
    <div className="stack">
      <div className="row ends base">
        <h2>
          Plan {number}
          <TakenWhen head={data} />
        </h2>
        <p className="row">
          <Link href={`/${seasonId}/taken`}>All that were taken</Link>
          {!isLast && data.plan && (
            <button
              type="button"
              disabled={take.isPending}
              onClick={() => take.mutate(number, { onSuccess: () => go(`/${seasonId}/taken`) })}
            >
              Take this one again
            </button>
          )}
        </p>
      </div>
      {take.error && (
        <p className="stop" role="alert">
          {take.error.message}
        </p>
      )}
      {data.plan === null ? (
        <p>It was taken with another version of the program, and cannot be shown here.</p>
      ) : (
        <SeasonPlanPart season={viewOfSeason(club, data.plan, today)} isKept />
      )}
    </div>
  );
}
