import { useEffect, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { type LifterEstimates, useEstimates } from '#web/api/useEstimates.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { LifterFacts } from './LifterFacts.tsx';
import { LifterForm } from './LifterForm.tsx';
import { LifterJumps } from './LifterJumps.tsx';
import { LiftsAwaited } from './LiftsAwaited.tsx';
import { lifterRecords } from './lifterRecords.ts';
import { type LifterView, lifterSections } from './lifterSections.tsx';
import { MinorCaution } from './MinorCaution.tsx';

/** One lifter: who it is, and below that the sections of `lifterSections`. */
export function LifterPage({ lifterId }: { lifterId: string }) {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const lifters = useRecords('lifter');
  const known = useEstimates(lifterId);
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
  const view: LifterView = {
    own,
    today,
    estimates: known.estimates,
    sets: sets.data ?? noSets,
    showsEstimate: opensWithEstimate(known) && sets.data !== undefined,
    hasEstimates: known.missing.length === 0,
    fault: known.error ?? sets.error,
  };
  const remove = () => {
    navigate('/');
    void lifters.remove(lifter.id, lifter.name);
  };
  return (
    <div className="stack loose">
      <div className="row ends">
        <Link href="/" className="lifters-back screen-only">
          All lifters
        </Link>
        <LiftsAwaited awaited={known.awaited} />
      </div>
      {editing ? (
        <LifterForm
          title={`Change ${lifter.name}`}
          lifter={lifter}
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
      <LifterJumps view={view} />
      <MinorCaution lifter={lifter} today={today} />
      {lifterSections.map(({ id, Caution }) => Caution && <Caution key={id} id={id} {...view} />)}
      {lifterSections.map(({ id, Section }) => Section && <Section key={id} id={id} {...view} />)}
    </div>
  );
}

/** While they are fetched: the same list each time, so that nothing is worked out again. */
const noSets: readonly LoggedSet[] = [];

/** Whether the first lift that the section opens with is there: it does not turn to another while one reads. */
function opensWithEstimate({ estimates, missing }: LifterEstimates): boolean {
  const first = liftWords.find(
    ({ value }) => missing.includes(value) || estimates.some(({ lift }) => lift === value),
  );
  return first !== undefined && !missing.includes(first.value);
}
