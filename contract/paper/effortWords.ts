import type { PlanBlock } from '#contract/day/dayPlan.ts';
import { percent } from '#contract/words/percent.ts';

/** What is said of a block's speed, time under strain and rest. */
export interface EffortWords {
  /** First rep to last: "0.62 → 0.58 m/s". */
  speed: string;
  /** "4 s a set", ways up and down; empty where it was not worked out. */
  strain: string;
  /** "resting 0:30, last rep 0.55 m/s, all reps 84 %"; empty where a shorter rest was not looked at or every rep is not made anyway. */
  shorterRest: string;
  /** "8 %", the strength to spare with which all reps are just made; "lacks 3 %"; empty where it was not worked out. */
  spare: string;
  /** "whole set 0.78 m/s, in the zone 74 %", the chance that the speed asked for lies in its zone; empty where none was asked. */
  inZone: string;
  /** "92 %", the chance of all reps of all sets; "71 % by the best alone" without a log; empty where it was not worked out. */
  allReps: string;
}

export function effortWords({
  sets,
  reps,
  effort,
  expected,
  explanation: { firstRep },
}: PlanBlock): EffortWords {
  const nothing = { strain: '', shorterRest: '', spare: '', inZone: '', allReps: '' };
  if (!firstRep.made) return { ...nothing, speed: 'not made by this calculation', spare: spareOf(effort) };
  if (effort === null) return { ...nothing, speed: `${speed(firstRep.meanSpeedMps)}, first rep only` };
  const { firstMps, lastMps, missed, shorterRest } = effort;
  const known = {
    strain: `${Math.round(effort.underStrainS)} s a set`,
    spare: spareOf(effort),
    inZone: inZone(expected),
    allReps: expected === null ? '' : `${chance(expected.chanceAllReps)}${goesBy[expected.goesBy]}`,
  };
  if (lastMps === null) {
    const where = missed === null ? '' : `, rep ${missed.rep} of set ${missed.set} not made`;
    return { ...known, speed: `${speed(firstMps)} at first${where}`, shorterRest: '' };
  }
  return {
    ...known,
    speed: sets * reps === 1 ? speed(lastMps) : `${firstMps.toFixed(2)} → ${speed(lastMps)}`,
    shorterRest: shorterRest === null ? '' : withRest(shorterRest, expected),
  };
}

/** A block in one line, the same on screen, paper and terminal: "0.62 → 0.58 m/s; 4 s a set; all reps 96 %; ...". */
export function effortLine(effort: EffortWords): string {
  const parts = [effort.speed, effort.strain, chancesLine(effort), effort.shorterRest];
  return unbroken(parts.filter((part) => part !== '').join('; '));
}

/** The chance of the zone that was asked for, where one was, and of all reps; what both go by is said once, behind the second. */
export function chancesLine({ inZone, allReps }: EffortWords): string {
  return unbroken([inZone, allReps && `all reps ${allReps}`].filter((part) => part !== '').join(', '));
}

/** What the figures of such a line are. */
export const effortKey =
  'Beside each step: bar speed of the first → last rep, time under the bar in a set, chance of making all reps of all sets; then the last rep and that chance with half a minute less rest.';

/** A number stays on one line with its unit, and with the arrow or times sign beside it. */
export function unbroken(text: string): string {
  return text
    .replaceAll(' → ', '\u00a0→\u00a0')
    .replaceAll(/(\d) × (?=\d)/g, '$1\u00a0×\u00a0')
    .replaceAll(/(\d) (kg|lb|%|cm|m\/s|s)(?![a-z])/g, '$1\u00a0$2');
}

/** A chance that no log tells says so itself. */
const goesBy = { log: '', best: ' by the best alone', bodyMass: ', strength assumed' } as const;

/** A mean over the set is said; the first rep's speed stands there already. */
function inZone(expected: PlanBlock['expected']): string {
  if (!expected?.zone) return '';
  const { of, mps, chance: share } = expected.zone;
  const mean = of === 'set' ? `whole set ${speed(mps)}, ` : '';
  return `${mean}in the zone ${chance(share)}`;
}

function withRest(
  { restS, lastMps }: NonNullable<NonNullable<PlanBlock['effort']>['shorterRest']>,
  expected: PlanBlock['expected'],
): string {
  const parts = [
    `resting ${restText(restS)}`,
    lastMps === null ? 'likely a rep missed' : `last rep ${speed(lastMps)}`,
  ];
  // Where no log tells, one rough chance is enough.
  if (expected?.goesBy === 'log' && expected.chanceShorterRest !== null)
    parts.push(`all reps ${chance(expected.chanceShorterRest)}`);
  return parts.join(', ');
}

/** A margin of ln strength as a share of the lifter's own; beyond a half it is no matter of strength. */
function spareOf(effort: PlanBlock['effort']): string {
  if (effort === null) return '';
  const share = 1 - Math.exp(-effort.marginLn);
  const spare = percent(Math.abs(share));
  if (share < 0) return `lacks ${spare}`;
  return share > 0.5 ? 'half or more' : spare;
}

/** No chance is certain: "over 99 %". */
function chance(share: number): string {
  if (share > 0.99) return 'over 99 %';
  if (share < 0.01) return 'under 1 %';
  return percent(share);
}

/** "1:15" */
export function restText(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}

function speed(mps: number): string {
  return `${mps.toFixed(2)} m/s`;
}
