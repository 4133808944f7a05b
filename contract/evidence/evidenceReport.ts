import { z } from 'zod';
import { lift, setupFamily } from '#contract/records/lift.ts';

const n = z.number();
const count = z.number().int();

const effect = z.strictObject({ value: n, low80: n, high80: n, low95: n, high95: n });
export type EffectRange = z.infer<typeof effect>;

const question = z.enum(['carryOver', 'boxHeight', 'variants', 'bandShare', 'equipped']);
export type Question = z.infer<typeof question>;

/** A family of setups in one lift: what an assistance lift belongs to. */
const variant = z.strictObject({ lift, ...setupFamily.shape });
export type Variant = z.infer<typeof variant>;

/** One row of an answer. With every part null it is the club as a whole. */
const evidenceLine = z.strictObject({
  lifterId: z.string().nullable(),
  lift: lift.nullable(),
  variant: variant.nullable(),
  equipped: z.boolean().nullable(),
  lifters: count,
  observations: count,
  /** Null where there is too little to say anything. */
  effect: effect.nullable(),
  /** Before the noise of single lifts was taken out; null where that does not apply. */
  naive: effect.nullable(),
});
export type EvidenceLine = z.infer<typeof evidenceLine>;

/** What may make an answer look better or worse than it is, with how far it applies here. */
const trap = z.discriminatedUnion('code', [
  z.strictObject({
    code: z.literal('regressionToTheMean'),
    reliability: n.nullable(),
    noiseShare: n,
    noiseKnown: z.enum(['measured', 'assumed']),
    noisePairs: count,
  }),
  z.strictObject({ code: z.literal('survivorsOnly'), leftOut: count, ofThemLeft: count }),
  z.strictObject({ code: z.literal('tooFewMeets'), lifters: count, gains: count }),
  z.strictObject({ code: z.literal('changedEquipment'), dropped: count }),
  z.strictObject({ code: z.literal('gearRemeasured'), touched: count, of: count }),
  z.strictObject({ code: z.literal('manyVariants'), looked: count }),
  z.strictObject({ code: z.literal('notByLot') }),
  z.strictObject({ code: z.literal('techniqueOfHeight') }),
]);
export type Trap = z.infer<typeof trap>;

/**
 * One question and its answer. Effects: of `carryOver`, `variants` and `equipped` kg on the platform for each kg in the
 * gym (the club's line of `equipped`: equipped less raw); of `boxHeight` % of the bar a cm; of `bandShare` % of the lift
 * for 10 points of the load that were bands.
 */
const evidenceAnswer = z.strictObject({
  question,
  lines: z.array(evidenceLine),
  traps: z.array(trap),
});
export type EvidenceAnswer = z.infer<typeof evidenceAnswer>;

/** What the club's log says of its own rules of thumb. */
export const evidenceReport = z.strictObject({
  /** Days of the first and last set that it rests on; null without any. */
  from: z.iso.date().nullable(),
  to: z.iso.date().nullable(),
  sets: count,
  meetLifts: count,
  /** Gym lifts count for a meet in so many days before it. */
  windowDays: count,
  answers: z.array(evidenceAnswer),
});
export type EvidenceReport = z.infer<typeof evidenceReport>;
