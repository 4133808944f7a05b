import type { DayPlan, PlanBlock, PlanPlace } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';

/** A gravity by which figures can be checked in the head: 1000 N are 100 kg. */
export const gravityMps2 = 10;

/** Two invented lifters on one rack, one on another; bands as given, 900 N of bar. */
export function inventedPlan(): DayPlan {
  return {
    dayId: 'day',
    date: '2026-11-26',
    gravityMps2,
    basis: '',
    oneSetPull: 0.5,
    awaited: [],
    retells: null,
    words: null,
    groups: [
      {
        groupId: 'group',
        title: 'Speed squat',
        work: 'speed',
        lift: 'squat',
        aim: { by: 'capability', bottomShare: 0.8, lockoutShare: 0.4 },
        places: [
          inventedPlace('short', 'north', 1, ['13-A'], 'measured', []),
          inventedPlace('tall', 'north', 2, ['13-A', '22-A'], 'estimated', [{ code: 'heightsEstimated' }]),
          inventedPlace('strong', 'south', 1, [], 'measured', [{ code: 'minor', age: 16 }]),
        ],
        racks: ['north', 'south'].map((rackId) => ({
          rackId,
          label: `Rack ${rackId}`,
          bar: 'Bar 20',
          changes: rackId === 'north' ? 2 : 0,
          handlingMinutes: rackId === 'north' ? 2 : 0,
          discs: [],
        })),
        totals: { misfit: 0, handlingMinutes: 2, total: 0 },
        proof: null,
        cautions: [],
      },
    ],
  };
}

function inventedPlace(
  lifterId: string,
  rackId: string,
  turn: number,
  bands: string[],
  known: 'measured' | 'estimated',
  cautions: PlanCaution[],
): PlanPlace {
  return {
    lifterId,
    name: `Invented ${lifterId}`,
    moreShare: 0,
    rackId,
    turn,
    start: { way: 'box', heightM: 0.36 },
    boxStack: ['Box 36'],
    problem: null,
    solved: {
      set: {
        bands: bands.map((label) => ({
          bandPairId: label,
          hookupId: 'low',
          label,
          hookupWords: 'doubled round the pegs',
        })),
        chains: [],
      },
      barKg: 90,
      byCoach: { bar: false, set: false },
      misfit: 0,
      reference: { kg: 200, from: 'best', loweredFromKg: null, doneOn: '2026-05-02', equipment: 'raw' },
      heights: { bottomM: 1, lockoutM: 1.6, known },
      strength: { known: 'estimated', sdLn: 0.03, belowShare: 0, setCount: 120, maxKg: null, lifter: null },
      blocks: [block(2, 60, bands.length), block(8, 90, bands.length)],
      cautions,
      others: [],
    },
  };
}

function block(sets: number, barKg: number, pairs: number): PlanBlock {
  const force = (bandN: number) => ({
    totalN: barKg * gravityMps2 + bandN,
    low95N: barKg * gravityMps2 + 0.9 * bandN,
    high95N: barKg * gravityMps2 + 1.1 * bandN,
    barN: barKg * gravityMps2,
    bandN,
    chainN: 0,
  });
  return {
    sets,
    reps: 2,
    restSeconds: 75,
    shareOfAim: barKg / 90,
    barKg,
    perSide: [{ massKg: 25.04, faceMassKg: 25, count: 2 }],
    nominalKg: null,
    explanation: {
      barKg,
      bottom: force(100 * pairs),
      mid: force(200 * pairs),
      lockout: force(300 * pairs),
      mean: force(200 * pairs),
      percentages: [
        { basis: 'bar', share: barKg / 200, low95: barKg / 200, high95: barKg / 200 },
        { basis: 'lockout', share: 0.75, low95: 0.74, high95: 0.76 },
      ],
      shares: [
        { s: 0, zM: 1, share: 0.8 },
        { s: 1, zM: 1.6, share: 0.4 },
      ],
      firstRep: {
        made: true,
        meanSpeedMps: 0.62,
        peakSpeedMps: 0.9,
        durationS: 0.97,
        slowestS: 0.4,
        slowestSpeedMps: 0.5,
      },
      foreAft: { bottomN: 0, lockoutN: 0 },
      anchors: [],
      slackBelowM: null,
      cautions: pairs > 0 ? [{ code: 'bandsUnderLoad' }] : [],
    },
    effort: {
      firstMps: 0.62,
      lastMps: 0.58,
      setMps: 0.61,
      tiredLn: 0,
      underStrainS: 4.34,
      missed: null,
      marginLn: 0.3,
      shorterRest: { restS: 45, lastMps: 0.55, marginLn: 0.28 },
    },
    expected: {
      chanceAllReps: 0.96,
      chanceShorterRest: 0.91,
      firstMps: { median: 0.62, low80: 0.6, high80: 0.64, low95: 0.58, high95: 0.66 },
      zone: null,
      goesBy: 'log',
    },
  };
}
