import type { PlanBlock } from '#contract/dayPlan.ts';

/** What is said of a block's speed, time under strain and rest. */
export interface EffortWords {
  /** First rep to last: "0.62 → 0.58 m/s". */
  speed: string;
  /** "4 s a set", ways up and down; empty where it was not worked out. */
  strain: string;
  /** "rest 0:30 → 0.55 m/s", the last rep then; empty where a shorter rest was not looked at or every rep is not made anyway. */
  shorterRest: string;
}

export function effortWords({ sets, reps, effort, explanation: { firstRep } }: PlanBlock): EffortWords {
  if (!firstRep.made) return { speed: 'not made by this calculation', strain: '', shorterRest: '' };
  if (effort === null) {
    return { speed: `${speed(firstRep.meanSpeedMps)}, first rep only`, strain: '', shorterRest: '' };
  }
  const { firstMps, lastMps, missed, shorterRest } = effort;
  const strain = `${Math.round(effort.underStrainS)} s a set`;
  if (lastMps === null) {
    const where = missed === null ? '' : `, rep ${missed.rep} of set ${missed.set} not made`;
    return { speed: `${speed(firstMps)} at first${where}`, strain, shorterRest: '' };
  }
  return {
    speed: sets * reps === 1 ? speed(lastMps) : `${firstMps.toFixed(2)} → ${speed(lastMps)}`,
    strain,
    shorterRest: shorterRest === null ? '' : withRest(shorterRest),
  };
}

function withRest({ restS, lastMps }: NonNullable<NonNullable<PlanBlock['effort']>['shorterRest']>): string {
  return `rest ${restText(restS)} → ${lastMps === null ? 'a rep missed' : speed(lastMps)}`;
}

/** "1:15" */
export function restText(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

function speed(mps: number): string {
  return `${mps.toFixed(2)} m/s`;
}
