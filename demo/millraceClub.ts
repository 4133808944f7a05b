import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceBands } from './millraceBands.ts';
import { millraceDays } from './millraceDays.ts';
import { millraceGear } from './millraceGear.ts';
import { millraceGymBests } from './millraceGymBests.ts';
import { millraceHeights } from './millraceHeights.ts';
import { millraceLifters } from './millraceLifters.ts';
import { millraceMeets } from './millraceMeets.ts';
import { millraceRacks } from './millraceRacks.ts';
import { millraceRestrictions } from './millraceRestrictions.ts';

/**
 * The demo: Millrace Barbell Club, its people, gear, places and numbers, all invented. Dates count from `today`
 * (a local date such as 2026-11-25), so that the club has trained last week and trains tomorrow.
 */
export function millraceClub(today: string): ClubRecords {
  return {
    club: [
      {
        id: 'club',
        name: 'Millrace Barbell Club',
        invented: true,
        timeZone: 'Europe/London',
        massUnit: 'kg',
        lengthUnit: 'cm',
        latitudeDeg: 53.4,
        heightAboveSeaM: 85,
        bandChangeMinutes: 1,
        pairMismatchShare: 0.05,
        safeStretchRatio: 2.8,
        leastBarShare: 0.4,
        leastBandShare: 0.25,
        mostBandShare: 0.45,
        mostPairs: 3,
        strengthChance: 0.75,
        remeasureAfterDays: 180,
        remeasureAfterCycles: 5000,
        note: 'An invented club to look around in. Replace it with your own whenever you like.',
      },
    ],
    ...millraceGear(),
    ...millraceBands(today),
    ...millraceRacks(today),
    ...millraceLifters(today),
    liftHeights: millraceHeights(today),
    restriction: millraceRestrictions(today),
    best: [...millraceMeets(today), ...millraceGymBests(today)],
    day: millraceDays(today),
  };
}
