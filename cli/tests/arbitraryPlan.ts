import * as fc from 'fast-check';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Aim, Block, Day } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';

/** A club with its day to solve, and what the logs of some of its lifters say. */
export interface DayToSolve {
  records: ClubRecords;
  day: Day & { id: string };
  estimates: StrengthEstimate[];
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const aim: fc.Arbitrary<Aim> = fc.oneof(
  fc.record({
    by: fc.constant('percent' as const),
    targets: fc.tuple(
      between(0.4, 0.65).map((share) => ({ basis: 'bar' as const, share })),
      between(0.6, 0.9).map((share) => ({ basis: 'lockout' as const, share })),
    ),
  }),
  fc.record({
    by: fc.constant('capability' as const),
    bottomShare: between(0.5, 0.95),
    lockoutShare: between(0.2, 0.5),
  }),
  fc
    .tuple(between(0.35, 0.95), fc.constantFrom('firstRep' as const, 'set' as const, undefined))
    .map(([fromMps, of]) => ({ by: 'speed' as const, fromMps, toMps: fromMps + 0.1, ...(of && { of }) })),
);

const block: fc.Arbitrary<Block> = fc.record({
  sets: fc.integer({ min: 1, max: 5 }),
  reps: fc.integer({ min: 1, max: 5 }),
  restSeconds: fc.integer({ min: 15, max: 180 }),
  shareOfAim: fc.constantFrom(0.7, 1),
});

/** Two lifters of a made-up club on days of every sort: with logs, with a best only and without either. */
export const arbitraryPlan: fc.Arbitrary<DayToSolve> = fc
  .record({
    aim,
    blocks: fc.array(block, { minLength: 1, maxLength: 3 }),
    isBoxed: fc.boolean(),
    hasBands: fc.boolean(),
    hasChains: fc.boolean(),
    knows: fc.tuple(fc.constantFrom('log', 'best', 'nothing'), fc.constantFrom('log', 'best', 'nothing')),
    speedSlope: between(-0.2, 0.8),
    leastChance: fc.constantFrom(null, 0.9),
    oneSetPull: fc.constantFrom(0, 0.5, 1),
  })
  .map(({ aim, blocks, isBoxed, hasBands, hasChains, knows, speedSlope, leastChance, oneSetPull }) => {
    const records = twoLifters();
    const [day] = records.day;
    if (!hasBands) records.bandPair = [];
    if (hasChains) {
      records.rack[0]!.takesChains = true;
      const chain = { massPerMetreKg: 4, lengthM: 1.5, attachBelowBarM: 0.3, pairs: 2, note: '' };
      records.chainPair = [{ id: 'chain', label: 'chain', ...chain }];
    }
    records.best = records.best.filter((_, i) => knows[i] !== 'nothing');
    const start = isBoxed ? { way: 'box' as const, heightM: 0.34 } : day!.groups[0]!.start;
    Object.assign(day!.groups[0]!, { aim, blocks, leastChance, start });
    day!.oneSetPull = oneSetPull;
    const estimates = records.lifter
      .filter((_, i) => knows[i] === 'log')
      .map(({ id }) => inventedEstimate(id, day!.date, id === 'tall' ? 200 : 110, speedSlope));
    return { records, day: day!, estimates };
  });

/** What a log might say of a lifter: three answers about one maximum. */
function inventedEstimate(lifterId: string, on: string, maxKg: number, speedSlope: number): StrengthEstimate {
  const bodyKg = 0.88 * (lifterId === 'tall' ? 110 : 52);
  const belief = {
    median: maxKg,
    low80: 0.97 * maxKg,
    high80: 1.03 * maxKg,
    low95: 0.95 * maxKg,
    high95: 1.05 * maxKg,
  };
  return {
    lifterId,
    lift: 'squat',
    on,
    setCount: 40,
    takenIn: 0,
    lastSetOn: on,
    bodyMassKg: bodyKg / 0.88,
    bodyMassKnown: 'measured',
    maxKg: belief,
    inEquipment: [],
    parameters: [],
    history: [{ on, ...belief }],
    rise: [],
    observations: [],
    slips: [],
    leftOut: [],
    draws: [-0.01, 0, 0.01].map((ln) => ({
      ...populationPrior('squat').mean,
      speedOffset: 0.03,
      speedSlope,
      lnTotal: Math.log(maxKg + bodyKg) + ln,
    })),
  };
}
