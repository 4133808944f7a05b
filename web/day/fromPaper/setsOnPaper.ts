import type { WrittenStep } from '#contract/paper/RackSheetModel.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { oneDecimal } from '#contract/words/written.ts';
import type { SetDraft } from '#web/setup/setDraft.ts';
import { draftOf } from '../log/draftOf.ts';
import type { PlaceLog } from '../log/useDayLog.ts';

/** A draft of which lifter and bar are known. */
export type PaperDraft = SetDraft & { lifterId: string; setup: { barKg: number } };

/** A line of a lifter on paper: a planned set or one beyond the plan. */
export interface SetOnPaper {
  key: string;
  /** As it stands on the paper, from 1; null: beyond the plan. */
  number: number | null;
  isFirstOfStep: boolean;
  /** The bar as the paper has it; what is loaded by it is `draft`'s, to the gram. */
  printedBar: string;
  /** What is on record of it; null: nothing yet. */
  logged: LoggedSet | null;
  /** As it would go on record untouched. */
  draft: PaperDraft;
}

/** A lifter's lines in the order of the paper: what was planned, what came on top, and room for one more. */
export function setsOnPaper(of: {
  log: PlaceLog;
  steps: readonly WrittenStep[];
  mass: MassUnit;
  dayId: string;
  lifterId: string;
  /** Names the lifter's place in the prescription that the paper shows. */
  key: string;
}): SetOnPaper[] {
  const { log, dayId, lifterId, steps, mass } = of;
  const draft = (planned: PlaceLog['work']['sets'][number] | null): PaperDraft => {
    const { setup, ...drawn } = draftOf({ log, planned, dayId, lifterId });
    return { ...drawn, lifterId, setup: { ...setup, barKg: setup.barKg ?? 0 } };
  };
  const planned = log.work.sets.map((set, at) => ({
    key: `${of.key} ${set.number}`,
    number: set.number,
    isFirstOfStep: at > 0 && set.step !== log.work.sets[at - 1]?.step,
    printedBar: steps[set.step]?.bar ?? oneDecimal(set.setup.barKg, mass),
    logged: log.done[at] ?? null,
    draft: draft(set),
  }));
  const beyond = draft(null);
  const more = [...log.extra, null].map((logged, at) => ({
    key: `${of.key} more ${at + 1}`,
    number: null,
    isFirstOfStep: false,
    printedBar: oneDecimal(beyond.setup.barKg, mass),
    logged,
    draft: beyond,
  }));
  return [...planned, ...more];
}
