import type { Newton, Share } from '../numeric/quantity.ts';
/**
 * What a coach must know before the bar is loaded, as data; the words are said in one place for screen, paper and
 * terminal. Masses in kg, forces in N, heights in m.
 */
export type Caution =
  | { code: 'slackBottom'; belowM: number }
  | { code: 'extrapolated'; pairId: string; stretch: number }
  | { code: 'overstretched'; pairId: string; stretch: number; safeStretch: number }
  | { code: 'notMeasured'; pairId: string }
  | { code: 'pairMismatch'; pairId: string; share: Share; allowedShare: Share }
  | { code: 'anchorOverloaded'; anchorId: string; pullN: Newton; ratedLoadN: number }
  | { code: 'anchorNotRated'; anchorId: string; pullN: Newton }
  | { code: 'bandsUnderLoad' }
  | { code: 'lightened'; atBottomN: Newton }
  | { code: 'maximal'; peakShare: Share }
  | { code: 'notMade'; stoppedAtS: number }
  | { code: 'volume'; reps: number; mostReps: number; zoneFrom: number; zoneTo: number | null }
  | { code: 'repsInSet'; reps: number; mostReps: number; zoneFrom: number; zoneTo: number | null };
