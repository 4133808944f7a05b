import type { SetEvidence } from '../SetEvidence.ts';

/** All of a set but where and with what it was lifted: a raw single made in the gym, of which nothing more was written down. */
export const plainSingle: Omit<SetEvidence, 'day' | 'rigging' | 'barKg' | 'movedBodyKg'> = {
  equipment: 'raw',
  barChecked: false,
  platform: false,
  reps: 1,
  made: 1,
  stoppedAtS: null,
  meanSpeedsMps: [],
  peakSpeedsMps: [],
  repsInReserve: null,
  restS: null,
};
