import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useEstimates } from '#web/api/useEstimates.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { UnitSwitch } from '#web/parts/UnitSwitch.tsx';
import { BestsSection } from './BestsSection.tsx';
import { BodyMassSection } from './BodyMassSection.tsx';
import { CapabilitySection } from './CapabilitySection.tsx';
import { HeightsSection } from './HeightsSection.tsx';
import { LifterFacts } from './LifterFacts.tsx';
import { LifterForm } from './LifterForm.tsx';
import { lifterRecords } from './lifterRecords.ts';
import { MinorCaution } from './MinorCaution.tsx';
import { ProjectionSection } from './projection/ProjectionSection.tsx';
import { EstimateSection } from './strength/EstimateSection.tsx';
import { TrialSection } from './trial/TrialSection.tsx';

/** One lifter: who, what any setup would be, measured heights, bests, body mass. */
export function LifterPage({ lifterId }: { lifterId: string }) {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const lifters = useRecords('lifter');
  const estimates = useEstimates(lifterId);
  const sets = useLifterSets(lifterId);
  const [editing, setEditing] = useState(false);
  const [, navigate] = useLocation();
  const own = lifterRecords(club, lifterId);

  useEffect(() => {
    const leave = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && event.target === document.body) navigate('/');
    };
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [navigate]);

  if (own === null) {
    return (
      <p>
        There is no such lifter. <Link href="/">All lifters</Link>
      </p>
    );
  }
  const { lifter } = own;
  const remove = () => {
    navigate('/');
    void lifters.remove(lifter.id, lifter.name);
  };
  return (
    <div className="stack loose">
      <div className="row ends">
        <Link href="/" className="lifters-back">
          All lifters
        </Link>
        <UnitSwitch />
      </div>
      {editing ? (
        <LifterForm
          title={`Change ${lifter.name}`}
          initial={lifter}
          onSave={async (draft) => {
            await lifters.update({ ...draft, id: lifter.id });
            setEditing(false);
          }}
          onLeave={() => setEditing(false)}
          onRemove={remove}
        />
      ) : (
        <LifterFacts own={own} today={today} onEdit={() => setEditing(true)} />
      )}
      <MinorCaution lifter={lifter} today={today} />
      <TrialSection own={own} today={today} />
      {estimates.data && estimates.data.length > 0 && sets.data ? (
        <EstimateSection own={own} estimates={estimates.data} sets={sets.data} />
      ) : (
        <CapabilitySection lifterId={lifter.id} today={today} />
      )}
      <EstimateState estimates={estimates} sets={sets} />
      <ProjectionSection key={lifter.id} lifter={lifter} today={today} />
      <HeightsSection own={own} today={today} />
      <BestsSection
        own={own}
        sets={sets.data ?? noSets}
        estimates={estimates.data ?? noEstimates}
        today={today}
      />
      <BodyMassSection own={own} today={today} />
    </div>
  );
}

/** What one waits for, or why it did not come. */
function EstimateState({ estimates, sets }: Record<'estimates' | 'sets', Waited>) {
  const error = estimates.error ?? sets.error;
  if (error !== null) return <p className="stop">What the log says could not be fetched: {error.message}</p>;
  if (estimates.isPending || sets.isPending)
    return (
      <p className="small quiet" aria-busy="true">
        Working out from the log what this lifter can do.
      </p>
    );
  return null;
}

interface Waited {
  error: Error | null;
  isPending: boolean;
}

/** While they are fetched: the same lists each time, so that nothing is worked out again. */
const noSets: readonly LoggedSet[] = [];
const noEstimates: readonly StrengthEstimate[] = [];
