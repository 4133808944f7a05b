import type { BandReps } from '#contract/log/BandReps.ts';
import type { BandPair } from '#contract/records/gear.ts';

/**
 * Reps of a pair since it was last measured, that day included. Those of the log are counted; those before its first day, which
 * the pair's record tells as one number, are taken as spread evenly since the pair was new, and all of them count where its age
 * is unknown.
 */
export function cyclesSince(
  { id, cycles, installedOn }: Pick<BandPair, 'id' | 'cycles' | 'installedOn'>,
  measuredOn: string | undefined,
  bandReps: readonly BandReps[],
  today: string,
): number {
  const ofPair = bandReps.filter(({ bandPairId }) => bandPairId === id);
  const logged = ofPair
    .filter(({ doneOn }) => measuredOn === undefined || doneOn >= measuredOn)
    .reduce((sum, { reps }) => sum + reps, 0);
  const logBegan = ofPair.map(({ doneOn }) => doneOn).toSorted()[0] ?? today;
  return logged + Math.round(cycles * shareSince(installedOn, measuredOn, logBegan));
}

/** The share of the time from `fromDate` to `toDate` that lies after `date`; all of it where a date is not known. */
function shareSince(fromDate: string | null, date: string | undefined, toDate: string): number {
  if (fromDate === null || date === undefined || date <= fromDate) return 1;
  if (date >= toDate) return 0;
  const [from, between, to] = [fromDate, date, toDate].map((day) => Date.parse(day)) as [
    number,
    number,
    number,
  ];
  return (to - between) / (to - from);
}
