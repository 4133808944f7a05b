import type { LogColumn } from '#contract/log/logColumns.ts';

/** What each column of the log is to a coach who looks for it in a spreadsheet. */
export const columnWords: Record<LogColumn, string> = {
  date: 'Date',
  lifter: 'Lifter',
  lift: 'Lift',
  order: 'Which set of the day',
  sets: 'How many sets alike',
  start: 'Start: free, box, pins, blocks ...',
  startHeight: 'Height of box, pins, boards, blocks',
  equipment: 'Lifted in: raw, wraps ...',
  bar: 'Weight on the bar',
  rack: 'Rack',
  bands: 'Bands',
  chains: 'Chains',
  reps: 'Reps asked',
  made: 'Reps made',
  stoppedAt: 'Where a miss stopped',
  meanSpeeds: 'Mean speed up',
  peakSpeeds: 'Peak speed',
  repsInReserve: 'Reps left',
  effort: 'Effort rating (10: no rep left)',
  rest: 'Rest before the set',
  bodyMass: 'Body mass',
  platform: 'At a meet',
  place: 'Place',
  note: 'Note',
};
