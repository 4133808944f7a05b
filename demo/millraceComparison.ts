import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { dayFrom } from './dayFrom.ts';
import { startOfSeasons } from './millraceSeasons.ts';

type Comparisons = Pick<ClubRecords, 'comparison' | 'takenOut'>;

const WAYS = ['waves of three weeks', 'waves of four weeks'] as const;
const WEEKS = 16;

/** Who drew what, by seed 8: the early crew, all of them of age and raw. Lifters of one pair have its number. */
const DRAWN = [
  ['bastien', 'Bastien Corvellou', 1, 1],
  ['lars', 'Lars Østermark', 0, 1],
  ['ilse', 'Ilse Vandermolen', 1, 2],
  ['tereza', 'Tereza Holoubková', 0, 2],
  ['kwabena', 'Kwabena Ofosu-Tandoh', 1, 3],
  ['odhran', 'Odhrán McGillacuddy', 0, 3],
  ['emre', 'Emre Karataylı', 0, null],
  ['maribel', 'Maribel Ancajas', 1, null],
] as const;

/** As it was told when the early crew was drawn, before the log said how its tests scatter. `millraceComparison.test.ts` plans it again. */
const TOLD: Pick<ComparisonPlan, 'scatter' | 'foretold'> = {
  scatter: { known: 'assumed', gainSd_percentAWeek: 0.2124, testSd_percent: 2.0201, lifters: 0, tests: 0 },
  foretold: {
    detectable_percent: 11.5,
    error_percent: 0.33,
    plays: 400,
    leaving_percent: 10,
    usualGain_percent: 3.2518,
    usualGainKnown: 'published',
    chanceToSeeHalf: 0.0656,
    outlook: 'cannotBeSeen',
    liftersNeeded: 372,
  },
};

/**
 * The invented club compares two lengths of wave for its early crew, from the first week of its seasons on. Eight lifters cannot show it, as was
 * said before they began, and six weeks of it show nothing. One was taken out when her knee hurt. Invented, like the club.
 */
export function millraceComparison(today: string): Comparisons {
  const startsOn = startOfSeasons(today);
  const after = (weeks: number) => dayFrom(startsOn, 7 * weeks);
  return {
    comparison: [
      {
        id: 'comparison-waves',
        title: 'Waves of three or of four weeks',
        lift: 'squat',
        family: null,
        firstMethodId: 'method-raw-with-bands',
        secondMethodId: null,
        drawnOn: dayFrom(startsOn, -3),
        planDocument: {
          outcome: 'strength',
          ways: [...WAYS],
          startsOn,
          endsOn: after(WEEKS),
          weeks: WEEKS,
          testOn: [0, 4, 8, 12, WEEKS].map(after),
          seed: 8,
          drawn: DRAWN.map(([id, name, way, pair]) => ({
            lifterId: `lifter-${id}`,
            name,
            way: WAYS[way],
            pair,
          })),
          notDrawn: [],
          ...TOLD,
        },
        note: 'Everybody was asked. We know that eight are too few; it is for the habit of deciding beforehand.',
      },
    ],
    takenOut: [
      {
        id: 'taken-out-maribel',
        comparisonId: 'comparison-waves',
        lifterId: 'lifter-maribel',
        fromOn: dayFrom(today, -9),
        why: 'left knee; she trains by what it allows',
      },
    ],
  };
}
