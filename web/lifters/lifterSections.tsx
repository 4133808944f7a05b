import type { ComponentType } from 'react';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { BestsSection } from './BestsSection.tsx';
import { BodyMassSection } from './BodyMassSection.tsx';
import { CapabilitySection } from './CapabilitySection.tsx';
import { HeightsSection } from './HeightsSection.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { ProjectionSection } from './projection/ProjectionSection.tsx';
import { RestrictedCaution, RestrictionsSection } from './RestrictionsSection.tsx';
import { EstimateSection } from './strength/EstimateSection.tsx';
import { TrialSection } from './trial/TrialSection.tsx';

/** What the page knows of its lifter, for every section. */
export interface LifterView {
  own: LifterRecords;
  today: string;
  /** As far as they are worked out. */
  estimates: readonly StrengthEstimate[];
  sets: readonly LoggedSet[];
  /** The first lift and the log are there: what the log says is shown. */
  showsEstimate: boolean;
  /** No lift is still worked out for the first time. */
  hasEstimates: boolean;
  /** Why what the log says could not be fetched. */
  fault: Error | null;
}

/** A section puts its id on what it draws: the address that jumps go to. */
type InSection = ComponentType<LifterView & { id: string }>;

export interface LifterSection {
  id: string;
  /** The word of its jump link. */
  word: string;
  /** Null: it is a place within the section before it, which bears that id. */
  Section: InSection | null;
  /** What it has to say where the lifter's loads are worked out, above all sections. */
  Caution?: InSection;
  /** Left out: always. */
  isShown?: (view: LifterView) => boolean;
}

/** The lifter's page from top to bottom; its jump links follow from it. */
export const lifterSections: readonly LifterSection[] = [
  { id: 'setup', word: 'This setup', Section: TrialSection },
  { id: 'strength', word: 'Strength', Section: StrengthOfLifter },
  { id: 'any-setup', word: 'Maximum for any setup', Section: null, isShown: (view) => view.showsEstimate },
  { id: 'meet', word: 'Next meet', Section: ProjectionSection },
  { id: 'restrictions', word: 'Restrictions', Section: RestrictionsSection, Caution: RestrictedCaution },
  { id: 'heights', word: 'Heights', Section: HeightsSection },
  { id: 'bests', word: 'Bests', Section: BestsSection },
  { id: 'body-mass', word: 'Body mass', Section: BodyMassSection },
];

/** What the log says; until it says something, what follows from bests and body mass. */
function StrengthOfLifter(view: LifterView & { id: string }) {
  const { showsEstimate, fault } = view;
  return (
    <>
      {showsEstimate ? <EstimateSection {...view} /> : <CapabilitySection {...view} />}
      {fault !== null && <p className="stop">What the log says could not be fetched: {fault.message}</p>}
    </>
  );
}
