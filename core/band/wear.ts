import type { BandCurve, BandReading } from './BandCurve.ts';
import { type FallingForce, fallingForces } from './fallingForces.ts';
import { fitBand } from './fitBand.ts';
import { latestMeasuring } from './latestMeasuring.ts';
import { tensionDifference } from './tensionDifference.ts';

/** What is known of one band's age and use. Dates are local calendar dates, `2026-11-25`. */
export interface BandHistory {
  restLengthM: number;
  widthMm: number;
  readings: readonly (BandReading & { takenOn: string })[];
  /** Reps done with the band since it was last measured. */
  cyclesSinceMeasured: number;
}

/** When a band wants a look. The club's settings; all of them assumptions, the maker's figures rule. */
export interface WearLimits {
  afterDays: number;
  afterCycles: number;
  driftShare: number;
  safeStretchRatio: number;
}

/** Why a band wants a look, each with what is allowed. Drift: how much more it pulls now, negative when softer. */
export type WearFinding =
  | { why: 'neverMeasured' }
  | { why: 'age'; days: number; allowed: number }
  | { why: 'cycles'; cycles: number; allowed: number }
  | { why: 'drift'; share: number; allowed: number; fromDate: string; toDate: string }
  | { why: 'overstretched'; stretch: number; allowed: number }
  | ({ why: 'fallingForce'; restLengthM: number } & FallingForce);

/** What speaks for measuring a band again, or for using it less far; empty when nothing does. */
export function wear(history: BandHistory, limits: WearLimits, today: string): WearFinding[] {
  return [
    ...measuringDue(history, limits, today),
    ...fallingFindings(history),
    ...stretchFinding(history, limits),
  ];
}

function measuringDue(history: BandHistory, limits: WearLimits, today: string): WearFinding[] {
  const latest = latestMeasuring(history.readings);
  const before = latestMeasuring(history.readings.filter((r) => !latest.includes(r)));
  if (curveOf(history, latest).known === 'notMeasured') return [{ why: 'neverMeasured' }];
  const findings: WearFinding[] = [];
  const toDate = lastDate(latest);
  const days = Math.round((Date.parse(today) - Date.parse(toDate)) / DAY_MS);
  if (days > limits.afterDays) findings.push({ why: 'age', days, allowed: limits.afterDays });
  const cycles = history.cyclesSinceMeasured;
  if (cycles > limits.afterCycles) findings.push({ why: 'cycles', cycles, allowed: limits.afterCycles });
  const share = tensionDifference(curveOf(history, latest), curveOf(history, before));
  if (share !== null && Math.abs(share) > limits.driftShare) {
    findings.push({ why: 'drift', share, allowed: limits.driftShare, fromDate: lastDate(before), toDate });
  }
  return findings;
}

const DAY_MS = 86_400_000;

function lastDate(readings: readonly { takenOn: string }[]): string {
  return readings
    .map((r) => r.takenOn)
    .sort()
    .at(-1)!;
}

function curveOf({ restLengthM, widthMm }: BandHistory, readings: readonly BandReading[]): BandCurve {
  return fitBand({ restLengthM, widthMm, readings }).loading;
}

function fallingFindings({ restLengthM, readings }: BandHistory): WearFinding[] {
  return fallingForces(latestMeasuring(readings)).map((fall) => ({
    why: 'fallingForce',
    restLengthM,
    ...fall,
  }));
}

function stretchFinding(history: BandHistory, limits: WearLimits): WearFinding[] {
  const longestM = Math.max(0, ...history.readings.map((r) => r.lengthM));
  const stretch = longestM / history.restLengthM;
  const allowed = limits.safeStretchRatio;
  return stretch > allowed ? [{ why: 'overstretched', stretch, allowed }] : [];
}
