import type { PlaceLog } from './useDayLog.ts';

/** Below a step: how many of its sets are on record, and how many of them held a miss. */
export function StepDone({ log, step }: { log: PlaceLog; step: number }) {
  const ofStep = log.work.sets.flatMap((set, i) => (set.step === step ? [log.done[i] ?? null] : []));
  const done = ofStep.filter((set) => set !== null);
  if (done.length === 0) return null;
  const missed = done.filter((set) => set.made < set.reps).length;
  return (
    <span className="step-done">
      ✓ {done.length} of {ofStep.length} done
      {missed > 0 && <>, ✕ {missed === 1 ? 'a miss' : `${missed} with a miss`}</>}
    </span>
  );
}
