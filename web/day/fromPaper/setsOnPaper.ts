import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { SetDraft } from '#web/setup/setDraft.ts';
import { draftOf } from '../log/draftOf.ts';
import type { PlaceLog } from '../log/useDayLog.ts';

/** A line of a lifter on paper: a planned set or one beyond the plan. */
export interface SetOnPaper {
  key: string;
  /** As it stands on the paper, from 1; null: beyond the plan. */
  number: number | null;
  isFirstOfStep: boolean;
  /** What is on record of it; null: nothing yet. */
  logged: LoggedSet | null;
  /** As it would go on record untouched. */
  draft: SetDraft & { lifterId: string };
}

/** A lifter's lines in the order of the paper: what was planned, what came on top, and room for one more. */
export function setsOnPaper(of: {
  log: PlaceLog;
  dayId: string;
  lifterId: string;
  /** Names the lifter's place in the prescription that the paper shows. */
  key: string;
}): SetOnPaper[] {
  const { log, dayId, lifterId } = of;
  const draft = (planned: PlaceLog['work']['sets'][number] | null) => ({
    ...draftOf({ log, planned, dayId, lifterId }),
    lifterId,
  });
  const planned = log.work.sets.map((set, at) => ({
    key: `${of.key} ${set.number}`,
    number: set.number,
    isFirstOfStep: at > 0 && set.step !== log.work.sets[at - 1]?.step,
    logged: log.done[at] ?? null,
    draft: draft(set),
  }));
  const more = [...log.extra, null].map((logged, at) => ({
    key: `${of.key} more ${at + 1}`,
    number: null,
    isFirstOfStep: false,
    logged,
    draft: draft(null),
  }));
  return [...planned, ...more];
}
