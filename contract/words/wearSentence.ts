import type { WearFinding } from '#core/band/wear.ts';
import { counted } from './counted.ts';
import { fallingSentence } from './fallingSentence.ts';
import { percent } from './percent.ts';

/** Why a band wants a look, as a coach says it. `dateText` writes a date as the reader is used to. */
export function wearSentence(finding: WearFinding, dateText: (date: string) => string): string {
  switch (finding.why) {
    case 'neverMeasured':
      return 'Never measured: hang it from a scale.';
    case 'age':
      return `Measured ${counted(finding.days, 'day')} ago; the club measures again after ${finding.allowed}.`;
    case 'cycles':
      return `About ${counted(finding.cycles, 'rep')} since it was measured; the club measures again after ${finding.allowed}.`;
    case 'drift':
      return `Pulls ${percent(Math.abs(finding.share))} ${finding.share < 0 ? 'less' : 'more'} than on ${dateText(finding.fromDate)}; more than ${percent(finding.allowed)} counts as drift.`;
    case 'overstretched':
      return `Was stretched to ${finding.stretch.toFixed(2)} times its rest length; the club's limit is ${finding.allowed}.`;
    case 'fallingForce':
      return fallingSentence(finding, finding.restLengthM);
  }
}

/** The same in two or three words, for a table. */
export function wearWord(finding: WearFinding): string {
  switch (finding.why) {
    case 'neverMeasured':
      return 'not measured';
    case 'age':
      return `${counted(finding.days, 'day')} old`;
    case 'cycles':
      return counted(finding.cycles, 'rep');
    case 'drift':
      return `${finding.share < 0 ? 'softer' : 'harder'} by ${percent(Math.abs(finding.share))}`;
    case 'overstretched':
      return `stretched ${finding.stretch.toFixed(2)} times`;
    case 'fallingForce':
      return 'force falls';
  }
}
