import { z } from 'zod';
import { basis } from '#contract/records/day.ts';

const n = z.number();
const id = z.string();
const ofPair = { pairId: id };
const zone = { reps: n, mostReps: n, zoneFrom: n, zoneTo: n.nullable() };

/** What a coach must know before the bar is loaded, as data; `contract/words` says it. SI units. */
export const planCaution = z.discriminatedUnion('code', [
  z.strictObject({ code: z.literal('slackBottom'), belowM: n }),
  z.strictObject({ code: z.literal('extrapolated'), ...ofPair, stretch: n }),
  z.strictObject({ code: z.literal('overstretched'), ...ofPair, stretch: n, safeStretch: n }),
  z.strictObject({ code: z.literal('notMeasured'), ...ofPair }),
  z.strictObject({ code: z.literal('pairMismatch'), ...ofPair, share: n, allowedShare: n }),
  z.strictObject({ code: z.literal('oneSideMeasured'), ...ofPair }),
  z.strictObject({ code: z.literal('anchorOverloaded'), anchorId: id, pullN: n, ratedLoadN: n }),
  z.strictObject({ code: z.literal('anchorNotRated'), anchorId: id, pullN: n }),
  z.strictObject({ code: z.literal('bandsUnderLoad') }),
  z.strictObject({ code: z.literal('lightened'), atBottomN: n }),
  z.strictObject({ code: z.literal('maximal'), peakShare: n }),
  z.strictObject({ code: z.literal('notMade'), stoppedAtS: n }),
  z.strictObject({ code: z.literal('notAllReps'), set: n, rep: n, sets: n }),
  z.strictObject({ code: z.literal('unlikely'), chance: n }),
  z.strictObject({ code: z.literal('madeLighter'), fromKg: n, chance: n }),
  z.strictObject({
    code: z.literal('outsideZone'),
    mps: n,
    fromMps: n,
    toMps: n,
    why: z.enum([
      'byHand',
      'madeLighter',
      'sharedBands',
      'lightestBar',
      'heaviestBar',
      'restricted',
      'balance',
    ]),
  }),
  z.strictObject({ code: z.literal('volume'), ...zone }),
  z.strictObject({ code: z.literal('repsInSet'), ...zone }),
  z.strictObject({
    code: z.literal('restricted'),
    leastBoxM: n.nullable(),
    mostShare: n.nullable(),
    mostKg: n.nullable(),
    shareOf: z.enum(['bar', 'lockout']),
    untilOn: z.iso.date().nullable(),
    isBroken: z.boolean(),
  }),
  z.strictObject({ code: z.literal('minor'), age: n }),
  z.strictObject({ code: z.literal('heightsEstimated') }),
  z.strictObject({ code: z.literal('heightsAssumed') }),
  z.strictObject({ code: z.literal('strengthAssumed') }),
  z.strictObject({ code: z.literal('strengthWide'), sdLn: n, chance: n, belowShare: n, workUp: z.boolean() }),
  z.strictObject({ code: z.literal('strengthOld'), doneOn: z.iso.date(), by: z.literal('log').optional() }),
  z.strictObject({ code: z.literal('bodyMassAssumed'), massKg: n }),
  z.strictObject({ code: z.literal('gravityAssumed') }),
  z.strictObject({ code: z.literal('otherEquipment'), equipment: z.string() }),
  z.strictObject({ code: z.literal('notLoadable'), wantedKg: n, nearestKg: n }),
  z.strictObject({
    code: z.literal('boundBinds'),
    bound: z.enum(['leastBar', 'leastBands', 'mostBands', 'mostPairs']),
    limit: n,
    wanted: n,
  }),
  z.strictObject({
    code: z.literal('noBands'),
    why: z.discriminatedUnion('reason', [
      z.strictObject({ reason: z.literal('noWay') }),
      z.strictObject({ reason: z.literal('shared') }),
      z.strictObject({
        reason: z.literal('noneFits'),
        slack: n,
        stretched: n,
        tooMuchForAnchor: n,
        late: n.optional(),
      }),
      z.strictObject({ reason: z.literal('tooStrong'), lightestKg: n, roomKg: n, pairId: id }),
      z.strictObject({ reason: z.literal('tooWeak'), strongestKg: n, leastKg: n }),
    ]),
  }),
  z.strictObject({ code: z.literal('barAssumed'), massKg: n }),
  z.strictObject({ code: z.literal('notWeighed'), bar: z.boolean(), discs: z.boolean() }),
  z.strictObject({
    code: z.literal('tooFew'),
    sort: z.enum(['bar', 'collarPair', 'box']),
    gearId: id,
    rackIds: z.array(id),
    has: n,
  }),
  z.strictObject({ code: z.literal('clash'), sort: z.enum(['bandPair', 'chainPair']), gearId: id }),
]);
export type PlanCaution = z.infer<typeof planCaution>;

const force = z.strictObject({ totalN: n, low95N: n, high95N: n, barN: n, bandN: n, chainN: n });

/** Everything that a coach may ask about one bar for one lifter; the shape of core's `Explanation`. */
export const explanation = z.strictObject({
  barKg: n,
  bottom: force,
  mid: force,
  lockout: force,
  mean: force,
  percentages: z.array(z.strictObject({ basis, share: n, low95: n, high95: n })),
  shares: z.array(z.strictObject({ s: n, zM: n, share: n })),
  firstRep: z.strictObject({
    made: z.boolean(),
    meanSpeedMps: n,
    peakSpeedMps: n,
    durationS: n,
    slowestS: n,
    slowestSpeedMps: n,
  }),
  foreAft: z.strictObject({ bottomN: n, lockoutN: n }),
  anchors: z.array(z.strictObject({ anchorId: id, pullN: n, ratedLoadN: n.nullable() })),
  slackBelowM: n.nullable(),
  cautions: z.array(planCaution),
});

/** How the sets of one block go, tiredness counted; the shape of core's `BlockEffort`. */
export const blockEffort = z.strictObject({
  /** Mean speeds of the first rep, and of the last rep of the last set; 0 and null where it is not made. */
  firstMps: n,
  lastMps: n.nullable(),
  /** Mean over all reps of the first set; null where one is missed, and in older plans. */
  setMps: n.nullable().default(null),
  /** ln strength still missing from the steps before when the first rep starts. */
  tiredLn: n.default(0),
  /** Ways up and down of one set. */
  underStrainS: n,
  missed: z.strictObject({ set: n, rep: n, stoppedAtS: n }).nullable(),
  /** ln strength to spare with which all reps are just made; negative: lacking. */
  marginLn: n,
  shorterRest: z.strictObject({ restS: n, lastMps: n.nullable(), marginLn: n }).nullable(),
});
