import type { ClubRecords } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';
import { millraceBands } from './millraceBands.ts';
import { millraceComparison } from './millraceComparison.ts';
import { millraceDays } from './millraceDays.ts';
import { millraceGear } from './millraceGear.ts';
import { millraceGymBests } from './millraceGymBests.ts';
import { millraceHeights } from './millraceHeights.ts';
import { millraceLifters } from './millraceLifters.ts';
import { millraceMeets } from './millraceMeets.ts';
import { millraceRacks } from './millraceRacks.ts';
import { millraceSeasons } from './millraceSeasons.ts';
import { millraceTemplates } from './millraceTemplates.ts';

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
        trainingStartsAt: '18:30',
        trainingMinutes: 120,
        namesInCalendar: false,
        wallStepKg: null,
        pairMismatchShare: 0.05,
        safeStretchRatio: 2.8,
        leastBarShare: 0.4,
        leastBandShare: 0.25,
        mostBandShare: 0.45,
        mostPairs: 3,
        strengthChance: 0.75,
        remeasureAfterDays: 180,
        remeasureAfterCycles: 5000,
        nearWeeks: null,
        note: 'An invented club to look around in. Replace it with your own whenever you like.',
      },
    ],
    ...millraceGear(),
    ...millraceBands(today),
    ...millraceRacks(today),
    ...millraceLifters(today),
    liftHeights: millraceHeights(today),
    restriction: restrictions(today),
    best: [...millraceMeets(today), ...millraceGymBests(today)],
    day: millraceDays(today),
    workTemplate: millraceTemplates(),
    ...millraceSeasons(today),
    ...millraceComparison(today),
  };
}

/** Two of the club's people are held back for a while. Invented, like the people. */
function restrictions(today: string): ClubRecords['restriction'] {
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
