import { useMemo, useState } from 'react';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { competitionSetup } from '#reckon/strength/riggingOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import type { LifterRecords } from '../lifterRecords.ts';
import { AbilitySection } from './AbilitySection.tsx';
import { AnySetupSection } from './AnySetupSection.tsx';
import { askedLifter } from './askDraws.ts';
import { riggingAsked } from './riggingAsked.ts';
import { SeasonCapacity } from './SeasonCapacity.tsx';
import { StrengthSection } from './StrengthSection.tsx';
import { WorkCapacity } from './WorkCapacity.tsx';
import './strength.css';

/** What the whole log says of this lifter, one lift at a time. */
export function EstimateSection(props: {
  id: string;
  own: LifterRecords;
  estimates: readonly StrengthEstimate[];
  sets: readonly LoggedSet[];
}) {
  const { own, estimates, sets } = props;
  const [lift, setLift] = useState<Lift | null>(null);
  const estimate = estimates.find((one) => one.lift === lift) ?? estimates[0];
  if (estimate === undefined) return null;
  const choices = liftWords.filter(({ value }) => estimates.some((one) => one.lift === value));
  return (
    <section id={props.id} className="stack loose ruled strength">
      <div className="row ends">
        <h2>What this lifter can do</h2>
        <Choice label="Lift" options={choices} value={estimate.lift} onChange={setLift} />
      </div>
      <StrengthSection key={estimate.lift} own={own} estimate={estimate} sets={sets} />
      <FromDraws own={own} estimate={estimate} sets={sets} />
      <KnownLegend />
    </section>
  );
}

/** Everything that is worked out by asking the estimate's draws. */
function FromDraws(props: { own: LifterRecords; estimate: StrengthEstimate; sets: readonly LoggedSet[] }) {
  const { own, estimate, sets } = props;
  const { lifterId, lift, on } = estimate;
  const club = useClub();
  const straight = useMemo(
    () => riggingAsked(club, { lifterId, lift, setup: competitionSetup(lift), on }),
    [club, lifterId, lift, on],
  );
  const lifter = useMemo(
    () => (typeof straight === 'string' ? null : askedLifter(estimate, straight)),
    [estimate, straight],
  );
  if (lifter === null || typeof straight === 'string')
    return <p className="stop">{typeof straight === 'string' ? straight : ''}</p>;
  return (
    <>
      <AbilitySection name={own.lifter.name} estimate={estimate} lifter={lifter} />
      <div className="stack strength-season">
        <h3>Work capacity</h3>
        <WorkCapacity lifter={lifter} />
        <SeasonCapacity name={own.lifter.name} lifterId={lifterId} lift={lift} />
      </div>
      <AnySetupSection estimate={estimate} lifter={lifter} sets={sets} />
    </>
  );
}
