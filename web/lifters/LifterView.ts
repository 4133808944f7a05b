import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LifterRecords } from './lifterRecords.ts';

/** What the page knows of its lifter, for every part of it. */
export interface LifterView {
  own: LifterRecords;
  today: string;
  /** As far as they are worked out. */
  estimates: readonly StrengthEstimate[];
  sets: readonly LoggedSet[];
  /** The log is there, also where it is empty. */
  hasSets: boolean;
  /** The first lift and the log are there: what the log says is shown. */
  showsEstimate: boolean;
  /** No lift is still worked out for the first time. */
  hasEstimates: boolean;
}

/** A part puts its id on the section that it draws. */
export type InPart = LifterView & { id: string };
