import { useEffect, useRef, useState } from 'react';
import { mergeFields } from '#contract/changes/mergeFields.ts';
import type { Day } from '#contract/records/day.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { useRecordsNow } from '#web/api/useRecordsNow.ts';
import { useNewest } from '#web/parts/useNewest.ts';

export interface DayDraft {
  /** The day as the coach sees it, saved or not yet. */
  day: Day;
  /** Changes the day at once on screen; it is saved at once, while somebody types when the typing pauses. */
  change: (how: (day: Day) => Day) => void;
  /** Saves what is not saved yet; true when everything is. */
  settle: () => Promise<boolean>;
  /** Why the last change could not be saved. */
  wrong: string | null;
}

/** A pause in typing after which a change is saved. */
const typedPauseMs = 500;

/** A training day that is saved by itself: what is typed shows at once, the record follows. */
export function useDayDraft(kept: Day): DayDraft {
  const { update } = useRecords('day');
  const daysNow = useRecordsNow('day');
  // What was just saved is known here a moment before the page is given it; whoever types in that moment goes on from it.
  const keptNow = () => daysNow().find(({ id }) => id === kept.id) ?? kept;
  const [draft, setDraft] = useState<Day | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const unsaved = useRef<Day | null>(null);
  /** What the unsaved changes began from. */
  const found = useRef(kept);
  const running = useRef<Promise<void>>(Promise.resolve());
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const saveLatest = async () => {
    const next = unsaved.current;
    if (next === null) return;
    try {
      const saved = await update(next, undefined, found.current);
      setWrong(null);
      const since = unsaved.current;
      unsaved.current = since === null || since === next ? null : withSince(next, saved, since);
      found.current = saved;
      setDraft(unsaved.current);
    } catch (error) {
      setWrong(error instanceof Error ? error.message : String(error));
    }
  };
  const settle = async () => {
    clearTimeout(timer.current);
    running.current = running.current.then(saveLatest);
    await running.current;
    return unsaved.current === null;
  };
  const change = (how: (day: Day) => Day) => {
    if (unsaved.current === null) found.current = keptNow();
    unsaved.current = how(unsaved.current ?? found.current);
    setDraft(unsaved.current);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void settle(), somebodyTypes() ? typedPauseMs : 0);
  };

  const leave = useNewest(settle);
  useEffect(() => {
    const leaveNow = () => void leave.current();
    addEventListener('pagehide', leaveNow);
    return () => {
      removeEventListener('pagehide', leaveNow);
      leaveNow();
    };
  }, [leave]);
  return { day: draft ?? keptNow(), change, settle, wrong };
}

/**
 * A day that was changed on from `sent` while that was saved, brought to begin from what was saved: there the space at the end of a note
 * is gone, and changes of others are in it.
 */
function withSince(sent: Day, saved: Day, since: Day): Day {
  return { ...since, ...mergeFields({ ...sent }, { ...saved }, { ...since }, 'yours').merged };
}

function somebodyTypes(): boolean {
  return document.activeElement instanceof HTMLInputElement && document.activeElement.type !== 'radio';
}
