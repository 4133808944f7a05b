import { KnownLegend } from '#web/parts/KnownLegend.tsx';
import { CapabilitySection } from '../CapabilitySection.tsx';
import type { InPart } from '../LifterView.ts';
import { AbilitySection } from './AbilitySection.tsx';
import { AnySetupSection } from './AnySetupSection.tsx';
import { OfDraws, OfEstimate } from './OfEstimate.tsx';
import { SeasonCapacity } from './SeasonCapacity.tsx';
import { StrengthSection } from './StrengthSection.tsx';
import { WorkCapacity } from './WorkCapacity.tsx';

/** What the log says of a lift over time; until it says something, what follows from bests and body mass. */
export function StrengthPart(view: InPart) {
  if (!view.showsEstimate) return <CapabilitySection {...view} />;
  return (
    <OfEstimate view={view} title="What this lifter can do">
      {(estimate) => (
        <>
          <StrengthSection key={estimate.lift} own={view.own} estimate={estimate} sets={view.sets} />
          <KnownLegend />
        </>
      )}
    </OfEstimate>
  );
}

/** The heaviest bar for any setup. */
export function AnySetupPart(view: InPart) {
  return (
    <OfEstimate view={view} title="Maximum for any setup">
      {(estimate) => (
        <OfDraws estimate={estimate}>
          {(lifter) => <AnySetupSection estimate={estimate} lifter={lifter} sets={view.sets} />}
        </OfDraws>
      )}
    </OfEstimate>
  );
}

/** What the lifter can hold at each height, and what else the log has taught. */
export function LearnedPart(view: InPart) {
  return (
    <OfEstimate view={view} title="What the log has taught">
      {(estimate) => (
        <OfDraws estimate={estimate}>
          {(lifter) => <AbilitySection name={view.own.lifter.name} estimate={estimate} lifter={lifter} />}
        </OfDraws>
      )}
    </OfEstimate>
  );
}

/** Reps at a share of the maximum, today and over the season. */
export function WorkCapacityPart(view: InPart) {
  const { lifter } = view.own;
  return (
    <OfEstimate view={view} title="Work capacity">
      {(estimate) => (
        <div className="stack strength-season">
          <OfDraws estimate={estimate}>{(asked) => <WorkCapacity lifter={asked} />}</OfDraws>
          <SeasonCapacity name={lifter.name} lifterId={lifter.id} lift={estimate.lift} />
        </div>
      )}
    </OfEstimate>
  );
}
