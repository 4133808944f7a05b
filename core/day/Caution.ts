/**
 * What a coach must know before the bar is loaded, as data; the words are said in one place for screen, paper and
 * terminal. Masses in kg, forces in N, heights in m.
 */
export type Caution =
  | { code: 'slackBottom'; belowM: number }
  | { code: 'extrapolated'; pairId: string; stretch: number }
  | { code: 'overstretched'; pairId: string; stretch: number; safeStretch: number }
  | { code: 'notMeasured'; pairId: string }
  | { code: 'pairMismatch'; pairId: string; share: number; allowedShare: number }
  | { code: 'anchorOverloaded'; anchorId: string; pullN: number; ratedLoadN: number }
  | { code: 'anchorNotRated'; anchorId: string; pullN: number }
  | { code: 'bandsUnderLoad' }
  | { code: 'lightened'; atBottomN: number }
  | { code: 'maximal'; peakShare: number }
  | { code: 'notMade'; stoppedAtS: number }
  | { code: 'volume'; reps: number; mostReps: number; zoneFrom: number; zoneTo: number | null }
  | { code: 'repsInSet'; reps: number; mostReps: number; zoneFrom: number; zoneTo: number | null };
