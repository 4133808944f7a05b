import { type ClubRecords, kindNames, type RecordOf } from '#contract/records/allKinds.ts';

/** A small invented club in which every kind has a record and every reference is used. */
export function smallClub(): ClubRecords {
  const setup = {
    rackId: 'rack-1',
    start: { way: 'box' as const, heightM: 0.36 },
    barKg: 140,
    bands: [{ bandPairId: 'pair-1', hookupId: 'hookup-1' }],
    chains: [{ chainPairId: 'chain-1', pairs: 1 }],
  };
  return {
    club: [
      {
        id: 'the-club',
        name: 'Quarry Lane',
        invented: true,
        timeZone: 'UTC',
        massUnit: 'kg',
        lengthUnit: 'cm',
        latitudeDeg: 51.5,
        heightAboveSeaM: null,
        bandChangeMinutes: 1,
        trainingStartsAt: null,
        trainingMinutes: 120,
        namesInCalendar: false,
        wallStepKg: null,
        pairMismatchShare: 0.05,
        safeStretchRatio: 2.5,
        leastBarShare: 0.4,
        leastBandShare: 0.25,
        mostBandShare: 0.45,
        mostPairs: 3,
        strengthChance: 0.75,
        remeasureAfterDays: 180,
        remeasureAfterCycles: 5000,
        nearWeeks: 3,
        note: '=1+1, "quoted"\nsecond line',
      },
    ],
    bar: [
      { id: 'bar-1', label: 'Long bar', massKg: 20, weighed: true, note: '' },
      { id: 'bar-2', label: 'Spare bar', massKg: 15, weighed: false, note: '' },
    ],
    collarPair: [{ id: 'collar-1', label: 'Spring', pairMassKg: 0.4, pairs: 4, note: '' }],
    disc: [
      {
        id: 'disc-1',
        faceMassKg: 25,
        pairs: 4,
        weighedMassKg: 25.12,
        diameterM: 0.45,
        thicknessM: null,
        note: '',
      },
    ],
    bandPair: [
      {
        id: 'pair-1',
        label: 'Wide 1',
        widthMm: 44,
        restLengthAM: 1.04,
        restLengthBM: null,
        nominalKg: null,
        installedOn: '2026-01-05',
        cycles: 120,
        retiredOn: null,
        note: '',
      },
    ],
    bandReading: [
      {
        id: 'reading-1',
        bandPairId: 'pair-1',
        side: 'a',
        takenOn: '2026-01-05',
        lengthM: 1.5,
        forceN: 210,
        direction: 'loading',
      },
    ],
    chainPair: [
      {
        id: 'chain-1',
        label: 'Heavy',
        massPerMetreKg: 5.2,
        lengthM: 1.6,
        attachBelowBarM: 0.2,
        pairs: 2,
        note: '',
      },
    ],
    box: [{ id: 'box-1', label: 'Low box', sort: 'box', heightM: 0.36, pieces: 1, note: '' }],
    rack: [
      {
        id: 'rack-1',
        label: 'Window rack',
        lifts: ['squat', 'bench'],
        barId: 'bar-1',
        collarPairId: 'collar-1',
        takesChains: true,
        benchHeightM: null,
        note: '',
      },
    ],
    anchor: [{ id: 'anchor-1', rackId: 'rack-1', label: 'low', xM: -0.05, yM: 0, zM: 0.1, ratedLoadN: 3000 }],
    hookup: [
      {
        id: 'hookup-1',
        rackId: 'rack-1',
        anchorId: 'anchor-1',
        label: 'doubled low',
        way: 'doubled',
        spentM: null,
        lifts: ['squat'],
      },
    ],
    scaleReading: [
      {
        id: 'scale-1',
        hookupId: 'hookup-1',
        bandPairId: 'pair-1',
        takenOn: '2026-02-01',
        barHeightM: 1.2,
        pairForceN: 800,
      },
    ],
    lifter: [
      {
        id: 'lifter-1',
        name: 'Ida Quill',
        bornOn: '1999-03-02',
        category: 'women',
        statureM: 1.5,
        equipment: 'raw',
        leftOn: null,
        labels: [],
        note: '',
      },
    ],
    bodyMass: [{ id: 'mass-1', lifterId: 'lifter-1', takenOn: '2026-11-01', massKg: 51.3 }],
    liftHeights: [
      {
        id: 'heights-1',
        lifterId: 'lifter-1',
        lift: 'squat',
        start: { way: 'free', heightM: null },
        bottomM: 0.72,
        lockoutM: 1.21,
        bottomForwardM: null,
        measuredOn: '2026-11-01',
      },
    ],
    restriction: [
      {
        id: 'restriction-1',
        lifterId: 'lifter-1',
        lift: 'squat',
        leastBoxM: 0.4,
        mostShare: 0.7,
        shareOf: 'lockout',
        fromOn: '2026-11-02',
        untilOn: '2026-11-20',
        note: 'knee',
      },
    ],
    best: [
      {
        id: 'best-1',
        lifterId: 'lifter-1',
        lift: 'squat',
        doneOn: '2026-10-03',
        place: 'Quarry Lane',
        platform: false,
        equipment: 'raw',
        setup,
        note: '',
      },
    ],
    day: [
      {
        id: 'day-1',
        date: '2026-11-26',
        title: 'Speed squats',
        groups: [
          {
            id: 'group-1',
            title: 'Early',
            work: 'speed',
            lift: 'squat',
            start: setup.start,
            aim: { by: 'speed', fromMps: 0.7, toMps: 0.9 },
            blocks: [{ sets: 8, reps: 2, restSeconds: 60, shareOfAim: 1 }],
            leastChance: null,
            bounds: null,
            away: [
              {
                lifterId: 'lifter-1',
                rackId: 'rack-1',
                start: null,
                byCoach: { barKg: null, bands: setup.bands, chains: setup.chains },
                moreShare: 0,
                note: '',
              },
            ],
            places: [
              {
                lifterId: 'lifter-1',
                rackId: 'rack-1',
                start: null,
                byCoach: { barKg: null, bands: setup.bands, chains: setup.chains },
                moreShare: 0.05,
                note: 'Stay tight.',
              },
            ],
          },
        ],
        oneSetPull: 0.5,
        note: '',
      },
    ],
    workTemplate: [
      {
        id: 'work-1',
        label: 'Doubles off the box',
        work: 'speed',
        lift: 'squat',
        start: setup.start,
        aim: { by: 'percent', targets: [{ basis: 'bar', share: 0.5 }] },
        blocks: [{ sets: 8, reps: 2, restSeconds: 60, shareOfAim: 1 }],
        leastChance: 0.9,
        bounds: null,
        note: '',
      },
    ],
    method: [{ id: 'method-1', methodDocument: singles }],
    meet: [{ id: 'meet-1', title: 'Quarry Cup', date: '2027-02-06', note: '' }],
    season: [
      { id: 'season-1', title: 'Winter', methodId: 'method-1', fromOn: '2026-11-30', note: 'first one' },
    ],
    seasonEntry: [
      {
        id: 'entry-1',
        seasonId: 'season-1',
        lifterId: 'lifter-1',
        meetIds: ['meet-1'],
        classes: [{ meetId: 'meet-1', upToKg: 82.5 }],
      },
    ],
    absence: [
      { id: 'absence-1', lifterId: 'lifter-1', fromOn: '2026-12-24', untilOn: '2027-01-02', why: 'away' },
    ],
    plannedByHand: [
      {
        id: 'by-hand-1',
        seasonId: 'season-1',
        lifterId: 'lifter-1',
        date: '2026-12-07',
        askedId: 'single',
        instead: { start: setup.start, aim: null, blocks: null },
        note: '',
      },
    ],
    comparison: [
      {
        id: 'comparison-1',
        title: 'Waves of three or four weeks',
        lift: 'squat',
        family: { way: 'box', hung: 'bands' },
        firstMethodId: 'method-1',
        secondMethodId: 'method-1',
        drawnOn: '2026-11-20',
        planDocument: ofOne,
        note: 'first one',
      },
    ],
    takenOut: [
      { id: 'out-1', comparisonId: 'comparison-1', lifterId: 'lifter-1', fromOn: '2026-12-20', why: 'away' },
    ],
  };
}

/** One phase of one heavy single a week. */
const singles: RecordOf<'method'>['methodDocument'] = {
  format: 'rackwright-method-1',
  id: 'singles',
  title: 'Singles',
  version: 1,
  madeOn: '2026-11-20',
  forWhom: 'Nobody: it is made for tests.',
  says: '',
  sources: [],
  zoneShift: 0,
  limits: { mostHeavyLiftsAWeek: null, mostRise: null, mostWeeksOnOneBandShare: null },
  phases: [
    {
      id: 'one',
      title: 'One',
      goal: 'A single a week.',
      waveWeeks: 1,
      leastWeeks: 1,
      mostWeeks: 10,
      isRound: false,
      keepsBefore: 0,
      onlyAfterMeet: false,
      days: [
        {
          weekday: 1,
          title: 'Squat',
          groups: [
            {
              id: 'single',
              title: 'Single',
              work: 'maximal',
              lift: 'squat',
              variants: [{ id: 'free', title: 'Free', start: { way: 'free', heightM: null } }],
              restWeeks: 0,
              aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.9] }] },
              blocks: [[{ sets: 1, reps: 1, restSeconds: 0, shareOfAim: 1 }]],
              leastChance: null,
              bounds: null,
            },
          ],
          accessories: [],
          sleds: [],
          holds: [],
        },
      ],
    },
  ],
};

/** A comparison with nobody to compare with. */
const ofOne: RecordOf<'comparison'>['planDocument'] = {
  outcome: 'setup',
  ways: ['Singles', 'four weeks'],
  startsOn: '2026-11-30',
  endsOn: '2027-01-25',
  weeks: 8,
  testOn: ['2026-11-30', '2026-12-28', '2027-01-25'],
  seed: 5,
  drawn: [{ lifterId: 'lifter-1', name: 'Ida Quill', way: 'Singles', pair: null }],
  notDrawn: [{ lifterId: 'gone', name: 'Somebody Gone', reason: 'takenOut' }],
  scatter: { known: 'assumed', gainSd_percentAWeek: 0.2, testSd_percent: 2, lifters: 0, tests: 0 },
  foretold: {
    detectable_percent: null,
    error_percent: null,
    plays: 400,
    leaving_percent: 10,
    usualGain_percent: 1.6,
    usualGainKnown: 'published',
    chanceToSeeHalf: 0,
    outlook: 'cannotBeSeen',
    liftersNeeded: null,
  },
};

/** The small club as an older file or archive holds it: without kinds, fields and parts of a day that came later. */
export function smallClubKept(text: string, hasKind: (kind: string) => boolean): ClubRecords {
  const club = text.includes('nearWeeks') ? smallClub() : beforeNearWeeks(smallClub());
  const none = Object.fromEntries(kindNames.filter((kind) => !hasKind(kind)).map((kind) => [kind, []]));
  if (text.includes('"away":')) return { ...club, ...none };
  const [day] = club.day;
  const groups = day!.groups.map((group) => ({
    ...group,
    away: [],
    places: group.places.map((place) => ({ ...place, moreShare: 0, note: '' })),
  }));
  return { ...club, day: [{ ...day!, groups }], ...none };
}

/** Neither club nor lifters said of their seasons what they may say since. */
function beforeNearWeeks(club: ClubRecords): ClubRecords {
  return {
    ...club,
    club: club.club.map((settings) => ({ ...settings, nearWeeks: null })),
    seasonEntry: club.seasonEntry.map((entry) => ({ ...entry, classes: [] })),
  };
}
