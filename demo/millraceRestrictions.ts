import type { RecordOf } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';

/** Two of the club's people are held back for a while. Invented, like the people. */
export function millraceRestrictions(today: string): RecordOf<'restriction'>[] {
  return [
    {
      id: 'restriction-maribel-squat',
      lifterId: 'lifter-maribel',
      lift: 'squat',
      leastBoxM: 0.36,
      mostShare: 0.9,
      shareOf: 'lockout',
      fromOn: dayFrom(today, -9),
      untilOn: dayFrom(today, 19),
      note: 'Left knee: no lower, and nothing near a maximum, until the physiotherapist has seen it again.',
    },
    {
      id: 'restriction-dragan-bench',
      lifterId: 'lifter-dragan',
      lift: 'bench',
      leastBoxM: null,
      mostShare: 0.8,
      shareOf: 'bar',
      fromOn: dayFrom(today, -40),
      untilOn: dayFrom(today, -12),
      note: 'Shoulder.',
    },
  ];
}
