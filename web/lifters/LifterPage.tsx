import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { Lifter } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { type LifterEstimates, useEstimates } from '#web/api/useEstimates.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { LifterFacts } from './LifterFacts.tsx';
import { LifterForm } from './LifterForm.tsx';
import type { LifterView } from './LifterView.ts';
import { LiftsAwaited } from './LiftsAwaited.tsx';
import { lifterParts } from './lifterParts.tsx';
import { lifterRecords } from './lifterRecords.ts';
import { MinorCaution } from './MinorCaution.tsx';
import { PartLinks } from './PartLinks.tsx';

/** One lifter: who it is, the row of links, and below that the part that the address names. */
export function LifterPage({ lifterId, partId }: { lifterId: string; partId: string }) {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const lifters = useRecords('lifter');
  const known = useEstimates(lifterId);
  const sets = useLifterSets(lifterId);
  // As the lifter was when somebody began to change it.
  const [editing, setEditing] = useState<Lifter | null>(null);
  const [, navigate] = useLocation();
  const own = lifterRecords(club, lifterId);
  const part = lifterParts.find(({ id }) => id === partId);

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
  const fault = known.error ?? sets.error;
  const view: LifterView = {
    own,
    today,
    estimates: known.estimates,
    sets: sets.data ?? noSets,
    hasSets: sets.data !== undefined,
    showsEstimate: opensWithEstimate(known) && sets.data !== undefined,
    hasEstimates: known.missing.length === 0,
  };
  const remove = () => {
    navigate('/');
    void lifters.remove(lifter.id, lifter.name);
  };
  return (
    <div className="stack lifters-page">
      <div className="row ends screen-only">
        <Link href="/" className="lifters-way">
          All lifters
        </Link>
        <LiftsAwaited awaited={known.awaited} />
      </div>
      {editing ? (
        <LifterForm
          title={`Change ${lifter.name}`}
          lifter={lifter}
          onSave={async (draft) => {
            await lifters.update({ ...draft, id: lifter.id }, undefined, editing);
            setEditing(null);
          }}
          onLeave={() => setEditing(null)}
          onRemove={remove}
        />
      ) : (
        <LifterFacts own={own} today={today} onEdit={() => setEditing(lifter)} />
      )}
      <PartLinks lifterId={lifterId} current={partId} />
      <MinorCaution lifter={lifter} today={today} />
      {lifterParts.map(({ id, Caution }) => Caution && <Caution key={id} id={id} {...view} />)}
      {fault !== null && <p className="stop">What the log says could not be fetched: {fault.message}</p>}
      {part ? (
        <part.Part key={part.id} id={part.id} {...view} />
      ) : (
        <p>There is no such part of a lifter's page. The links above lead to all of them.</p>
      )}
    </div>
  );
}

/** While they are fetched: the same list each time, so that nothing is worked out again. */
const noSets: readonly LoggedSet[] = [];

/** Whether the first lift that a part opens with is there: it does not turn to another while one reads. */
function opensWithEstimate({ estimates, missing }: LifterEstimates): boolean {
  const first = liftWords.find(
    ({ value }) => missing.includes(value) || estimates.some(({ lift }) => lift === value),
  );
  return first !== undefined && !missing.includes(first.value);
}
