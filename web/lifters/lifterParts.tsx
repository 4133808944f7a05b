import type { ComponentType } from 'react';
import { ApproachPart } from './approach/ApproachPart.tsx';
import { BestsSection } from './BestsSection.tsx';
import { BodyMassSection } from './BodyMassSection.tsx';
import { HeightsSection } from './HeightsSection.tsx';
import type { InPart } from './LifterView.ts';
import { ProjectionSection } from './projection/ProjectionSection.tsx';
import { RestrictedCaution, RestrictionsSection } from './RestrictionsSection.tsx';
import { SeasonSection } from './SeasonSection.tsx';
import { AnySetupPart, LearnedPart, StrengthPart, WorkCapacityPart } from './strength/strengthParts.tsx';
import { TodayPart } from './today/TodayPart.tsx';
import { TrialSection } from './trial/TrialSection.tsx';
import { WeeksPart } from './weeks/WeeksPart.tsx';

export interface LifterPart {
  /** The end of its address, and the id of what it draws; `today` is what the bare address opens. */
  id: string;
  /** The word of its link. */
  word: string;
  Part: ComponentType<InPart>;
  /** What it has to say where the lifter's loads are worked out: above every part. */
  Caution?: ComponentType<InPart>;
}

/** The parts of a lifter's page, each under an address of its own; the row of links follows from it. */
export const lifterParts: readonly LifterPart[] = [
  { id: 'today', word: 'Today', Part: TodayPart },
  { id: 'weeks', word: 'Over the weeks', Part: WeeksPart },
  { id: 'setup', word: 'Try a setup', Part: TrialSection },
  { id: 'strength', word: 'Strength', Part: StrengthPart },
  { id: 'any-setup', word: 'Any setup', Part: AnySetupPart },
  { id: 'meet', word: 'Next meet', Part: ProjectionSection },
  { id: 'approach', word: 'Into the meet', Part: ApproachPart },
  { id: 'bests', word: 'Bests', Part: BestsSection },
  { id: 'learned', word: 'Learned', Part: LearnedPart },
  { id: 'work-capacity', word: 'Work capacity', Part: WorkCapacityPart },
  { id: 'heights', word: 'Heights', Part: HeightsSection },
  { id: 'body-mass', word: 'Body mass', Part: BodyMassSection },
  { id: 'season', word: 'Season', Part: SeasonSection },
  { id: 'restrictions', word: 'Restrictions', Part: RestrictionsSection, Caution: RestrictedCaution },
];
