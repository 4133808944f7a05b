import { countedLn, expectedMps, type SpeedCorrection } from '../rep/expectedSpeed.ts';
import type { RepTable } from './repTable.ts';
import type { Step } from './walkSession.ts';

/** Means over the reps of a set: the model's mean speed (m/s), and the surplus as far as a correction counts it. */
export interface SetSpeed {
  mps: number;
  surplusLn: number;
}

/** Null where a rep is missed. Each rep counts alike, as devices average a set. */
export function setSpeed(
  { compiled, durationS }: RepTable,
  steps: readonly Step[],
  upToLn: number,
): SetSpeed | null {
  if (steps[steps.length - 1]!.surplusLn < 0) return null;
  const wayM = compiled.load.lockoutM - compiled.load.bottomM;
  const mean = (value: (step: Step) => number) =>
    steps.reduce((sum, step) => sum + value(step), 0) / steps.length;
  return {
    mps: mean(({ surplusLn }) => wayM / durationS(surplusLn)),
    surplusLn: mean(({ surplusLn }) => countedLn(surplusLn, upToLn)),
  };
}

/** Mean speed (m/s) to expect of a set; without a correction the model's. */
export function expectedSetMps(
  { mps, surplusLn }: SetSpeed,
  correction: SpeedCorrection | undefined,
): number {
  return correction === undefined ? mps : expectedMps(mps, surplusLn, correction);
}
