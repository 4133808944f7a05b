import { freshPlace } from '#contract/day/freshPlace.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import { emptyClub } from './emptyClub.ts';

/** A club of one rack, two band pairs and two lifters, one of 150 cm and one of 195 cm. Everything is made up. */
export function twoLifters(): ClubRecords {
  const free = { way: 'free' as const, heightM: null };
  return {
    ...emptyClub(),
    club: [
      {
        id: 'club',
        name: 'Two lifters',
        invented: true,
        timeZone: 'UTC',
        massUnit: 'kg',
        lengthUnit: 'cm',
        latitudeDeg: null,
        heightAboveSeaM: null,
        bandChangeMinutes: 1,
        trainingStartsAt: null,
        trainingMinutes: 120,
        namesInCalendar: false,
        wallStepKg: null,
        pairMismatchShare: 0.05,
        safeStretchRatio: 3.5,
        leastBarShare: 0.4,
        leastBandShare: 0.25,
        mostBandShare: 0.45,
        mostPairs: 3,
        strengthChance: 0.75,
        remeasureAfterDays: 180,
        remeasureAfterCycles: 5000,
        nearWeeks: null,
        note: '',
      },
    ],
    bar: [{ id: 'bar', label: 'Bar', massKg: 20, weighed: true, note: '' }],
    disc: [25, 20, 10, 5, 2.5, 1.25].map((faceMassKg) => ({
      id: `disc ${faceMassKg}`,
      faceMassKg,
      pairs: 2,
      weighedMassKg: null,
      diameterM: null,
      thicknessM: null,
      note: '',
    })),
    bandPair: [pair('light', 13), pair('heavy', 29)],
    bandReading: [...readings('light', 40), ...readings('heavy', 90)],
    rack: [
      {
        id: 'rack',
        label: 'Rack',
        lifts: ['squat'],
        barId: 'bar',
        collarPairId: null,
        takesChains: false,
        benchHeightM: null,
        note: '',
      },
    ],
    anchor: [{ id: 'peg', rackId: 'rack', label: 'Low pegs', xM: 0, yM: 0, zM: 0.2, ratedLoadN: 4000 }],
    hookup: [
      {
        id: 'doubled',
        rackId: 'rack',
        anchorId: 'peg',
        label: 'Doubled',
        way: 'doubled',
        spentM: null,
        lifts: ['squat'],
      },
    ],
    lifter: [lifter('short', 1.5), lifter('tall', 1.95)],
    bodyMass: [
      { id: 'm1', lifterId: 'short', takenOn: '2026-01-01', massKg: 52 },
      { id: 'm2', lifterId: 'tall', takenOn: '2026-01-01', massKg: 110 },
    ],
    liftHeights: [
      {
        id: 'h1',
        lifterId: 'short',
        lift: 'squat',
        start: free,
        bottomM: 0.72,
        lockoutM: 1.2,
        bottomForwardM: null,
        measuredOn: '2026-01-01',
      },
      {
        id: 'h2',
        lifterId: 'tall',
        lift: 'squat',
        start: free,
        bottomM: 0.98,
        lockoutM: 1.6,
        bottomForwardM: null,
        measuredOn: '2026-01-01',
      },
    ],
    best: [best('short', 110), best('tall', 200)],
    day: [
      {
        id: 'day',
        date: '2026-03-01',
        title: '',
        oneSetPull: 0.3,
        note: '',
        groups: [
          {
            id: 'group',
            title: 'Speed',
            work: 'speed',
            lift: 'squat',
            start: free,
            aim: {
              by: 'percent',
              targets: [
                { basis: 'bar', share: 0.5 },
                { basis: 'lockout', share: 0.75 },
              ],
            },
            blocks: [
              { sets: 2, reps: 2, restSeconds: 60, shareOfAim: 0.8 },
              { sets: 6, reps: 2, restSeconds: 60, shareOfAim: 1 },
            ],
            leastChance: null,
            bounds: null,
            away: [],
            places: ['short', 'tall'].map((lifterId) => freshPlace(lifterId, 'rack')),
          },
        ],
      },
    ],
  };
}

function pair(id: string, widthMm: number): RecordOf<'bandPair'> {
  return {
    id,
    label: id,
    widthMm,
    restLengthAM: 1.04,
    restLengthBM: null,
    nominalKg: null,
    installedOn: null,
    cycles: 0,
    retiredOn: null,
    note: '',
  };
}

/** Side a only, on the line of neo-Hookean rubber: force = stiffness (ratio - ratio^-2). */
function readings(bandPairId: string, stiffnessN: number): RecordOf<'bandReading'>[] {
  return [1.2, 1.6, 2, 2.4, 2.8].map((ratio) => ({
    id: `${bandPairId} ${ratio}`,
    bandPairId,
    side: 'a',
    takenOn: '2026-01-01',
    lengthM: 1.04 * ratio,
    forceN: stiffnessN * (ratio - ratio ** -2),
    direction: 'loading',
  }));
}

function lifter(id: string, statureM: number): RecordOf<'lifter'> {
  return {
    id,
    name: id,
    bornOn: null,
    category: 'women',
    statureM,
    equipment: 'raw',
    leftOn: null,
    labels: [],
    note: '',
  };
}

function best(lifterId: string, barKg: number): RecordOf<'best'> {
  return {
    id: `best ${lifterId}`,
    lifterId,
    lift: 'squat',
    doneOn: '2026-01-15',
    place: '',
    platform: false,
    equipment: 'raw',
    setup: { rackId: null, start: { way: 'free', heightM: null }, barKg, bands: [], chains: [] },
    note: '',
  };
}
