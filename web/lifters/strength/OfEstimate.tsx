import { type ReactNode, useMemo } from 'react';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { competitionSetup } from '#reckon/strength/riggingOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import type { InPart } from '../LifterView.ts';
import { type AskedLifter, askedLifter } from './askDraws.ts';
import { riggingAsked } from './riggingAsked.ts';
import './strength.css';

/** A part that the log fills, one lift at a time: the chosen lift stands in the address. */
export function OfEstimate(props: {
  view: InPart;
  title: string;
  children: (estimate: StrengthEstimate) => ReactNode;
}) {
  const { id, estimates, showsEstimate, hasEstimates } = props.view;
  const [lift, setLift] = useInAddress('lift');
  const estimate = estimates.find((one) => one.lift === lift) ?? estimates[0];
  const choices = liftWords.filter(({ value }) => estimates.some((one) => one.lift === value));
  return (
    <section id={id} className="stack loose ruled strength">
      <div className="row ends">
        <h2>{props.title}</h2>
        {showsEstimate && estimate && (
          <Choice label="Lift" options={choices} value={estimate.lift} onChange={setLift} />
        )}
      </div>
      {showsEstimate && estimate ? (
        props.children(estimate)
      ) : (
        <p>
          {hasEstimates
            ? 'The log says nothing about this lifter yet: log a set, or write down a best.'
            : 'The log is being read; this part follows when that is done.'}
        </p>
      )}
    </section>
  );
}

/** What is worked out by asking the estimate's draws; where records are missing for it, the sentence that says which. */
export function OfDraws(props: { estimate: StrengthEstimate; children: (lifter: AskedLifter) => ReactNode }) {
  const { estimate } = props;
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
  return props.children(lifter);
}
