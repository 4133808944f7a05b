import type { PlanCaution } from '#contract/day/explainedBar.ts';

type Outside = Extract<PlanCaution, { code: 'outsideZone' }>;

/** Why a bar is faster or slower than was asked, and what would help. */
export function outsideZoneSentence({ mps, fromMps, toMps, why }: Outside): string {
  const slow = mps < fromMps;
  return `Expected at ${mps.toFixed(2)} m/s, ${slow ? 'slower' : 'faster'} than the ${fromMps} to ${toMps} m/s asked for: ${because[why]}.`;
}

const because: Record<Outside['why'], string> = {
  byHand: 'bar, bands or chains are set by hand',
  madeLighter: 'the bar was made lighter so that all reps are likely made',
  sharedBands:
    'these bands serve the whole rack, and others would put this lifter in the zone; take one of the other proposals, or slide towards own bands for each',
  lightestBar: 'this is the lightest bar allowed; a slower zone, or a lower bound for the bar, would help',
  heaviestBar: 'the discs at this rack load no heavier bar',
  restricted: "a heavier bar would go beyond this lifter's restriction",
  balance:
    'an even load and few changes of bands counted for more; set the bar by hand, or slide towards own bands for each',
};
