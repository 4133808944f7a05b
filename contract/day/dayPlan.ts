import { z } from 'zod';
import { aim, day as dayKind } from '#contract/records/day.ts';
import { knownHow } from '#contract/records/knownHow.ts';
import { equipment, lift, start } from '#contract/records/lift.ts';
import { belief } from '#contract/strength/strengthEstimate.ts';
import { blockEffort, explanation, planCaution } from './explainedBar.ts';
import { otherSetup, setOnBar } from './otherSetup.ts';
import { planWords } from './planWords.ts';

const id = z.string();
const disc = z.strictObject({ massKg: z.number(), faceMassKg: z.number(), count: z.number().int() });

/**
 * What percentages refer to: a best that was lifted, what the model says a straight bar would be, or what the log leaves
 * of either.
 */
export const reference = z.strictObject({
  kg: z.number(),
  from: z.enum(['best', 'model', 'log']),
  /** The best or the model's maximum that is more than the lifter surely has; null where it stands. */
  loweredFromKg: z.number().nullable().default(null),
  doneOn: z.iso.date().nullable(),
  equipment,
});

const planBlock = z.strictObject({
  sets: z.number().int(),
  reps: z.number().int(),
  restSeconds: z.number().int(),
  shareOfAim: z.number(),
  /** Bar, collars and discs as loaded. */
  barKg: z.number(),
  perSide: z.array(disc),
  /** The number of trade habit: bar and the pairs' nominal numbers; null where a pair has none. */
  nominalKg: z.number().nullable(),
  explanation,
  /** Null in plans made before sets were worked out, and where a bar takes longer than anybody can strain. */
  effort: blockEffort.nullable().default(null),
  /** What is to be expected; null where no effort was worked out, and in older plans where no estimate was at hand. */
  expected: z
    .strictObject({
      /** Chance that all reps of all sets up to the end of the block are made. */
      chanceAllReps: z.number(),
      /** The same with the shorter rest of `effort`; null where none was looked at, and in older plans. */
      chanceShorterRest: z.number().nullable().default(null),
      /** Mean speed of the first rep on an average day; null where only a best or body mass tells of it. */
      firstMps: belief.nullable(),
      /** The speed asked for; null for another aim, lighter steps and in older plans. */
      zone: z
        .strictObject({
          /** Whose mean speed: the first rep's, or that of all reps of the first set. */
          of: z.enum(['firstRep', 'set']),
          fromMps: z.number(),
          toMps: z.number(),
          mps: z.number(),
          /** That the measured speed lies in the zone. */
          chance: z.number(),
        })
        .nullable()
        .default(null),
      /** What it goes by: the whole log, one best, or the strength assumed from body mass. */
      goesBy: z.enum(['log', 'best', 'bodyMass']).default('log'),
    })
    .nullable()
    .default(null),
});

const n = z.number();
/** Core's `Capability` and `SpeedCorrection`, kept so that a picture of the plan goes by the same lifter. */
const planCapability = z.strictObject({
  strengthN: n,
  slope: n,
  curvature: n,
  dip: z.strictObject({ depth: n, at: n, width: n }),
  maxSpeedMps: n,
  rebound: n,
  reboundTimeS: n,
  strainAfterS: n,
  strainTimeS: n,
  buildUpTimeS: n,
  builtShare: n,
  easing: n,
  movedBodyKg: n,
  range: z.strictObject({ fromM: n, toM: n }),
});
const speedCorrection = z.strictObject({ offsetMps: n, perSurplusMps: n, upToLn: n });

const planPlace = z.strictObject({
  lifterId: id,
  name: z.string(),
  rackId: id,
  /** Turn at the rack, from 1. */
  turn: z.number().int(),
  start,
  /** By how much more than the group the lifter aims at; 0 in older plans. */
  moreShare: z.number().default(0),
  /** What the box of the start is built of, the box first: ["Box 36", "Mat 2.5"]; empty without one, and in older plans. */
  boxStack: z.array(z.string()).default([]),
  /** Why nothing could be worked out for this lifter; the rest of the fields that need it are then null. */
  problem: z.string().nullable(),
  solved: z
    .strictObject({
      set: setOnBar,
      barKg: z.number(),
      /** What the coach fixed by hand. */
      byCoach: z.strictObject({ bar: z.boolean(), set: z.boolean() }),
      misfit: z.number(),
      reference,
      heights: z.strictObject({ bottomM: z.number(), lockoutM: z.number(), known: knownHow }),
      strength: z.strictObject({
        known: knownHow,
        sdLn: z.number(),
        /** By what share of it proposals go by less, since it is not sure; 0 in older plans. */
        belowShare: z.number().default(0),
        /** How many logged sets it rests on; null: on a best or on body mass alone. */
        setCount: z.number().int().nullable().default(null),
        /** The straight maximum by the log that it went by; null where it went by a best, and in older plans. */
        maxKg: z.number().nullable().default(null),
        /** What every figure of the plan goes by, the middle answer of a log; null in older plans. */
        lifter: z.strictObject({ capability: planCapability, speedCorrection }).nullable().default(null),
      }),
      blocks: z.array(planBlock),
      cautions: z.array(planCaution),
      /** Other proposals beside this one, best first; none in older plans. */
      others: z.array(otherSetup).default([]),
    })
    .nullable(),
});

const planRack = z.strictObject({
  rackId: id,
  label: z.string(),
  bar: z.string(),
  /** Pairs of bands and chains taken off or put on while all lifters of the rack take one turn each. */
  changes: z.number().int(),
  handlingMinutes: z.number(),
  /** Discs that this rack may take while the others load theirs. */
  discs: z.array(z.strictObject({ massKg: z.number(), faceMassKg: z.number(), pairs: z.number().int() })),
});

export const planGroup = z.strictObject({
  groupId: id,
  title: z.string(),
  work: dayKind.shape.shape.groups.element.shape.work,
  lift,
  /** What was asked, as the day had it. */
  aim,
  places: z.array(planPlace),
  racks: z.array(planRack),
  totals: z.strictObject({ misfit: z.number(), handlingMinutes: z.number(), total: z.number() }),
  /** Null where there was nothing to share out. */
  proof: z
    .strictObject({
      status: z.enum(['optimal', 'timeLimit']),
      bound: z.number(),
      gap: z.number(),
      /** Sets of a very large stock that were not tried one by one; the bound holds for them. None in older plans. */
      setsLeftOut: z.number().default(0),
    })
    .nullable(),
  cautions: z.array(planCaution),
});

/** A training day worked out: what is on the bar for each lifter, and what that really is. */
export const dayPlan = z.strictObject({
  dayId: id,
  date: z.iso.date(),
  gravityMps2: z.number(),
  /** The mark of what it rests on (`planBasis`): another today means that something was changed since. */
  basis: z.string().default(''),
  /** What was asked. */
  oneSetPull: z.number(),
  groups: z.array(planGroup),
  /** Lifters whose log was still being worked out: they are prescribed by their bests, as long as it is not solved again. */
  awaited: z.array(id).default([]),
  /** The number whose bars and gear these are, told anew: by the log, or in other words; null: worked out. */
  retells: z.number().int().nullable().default(null),
  /** What its papers say beside the figures; null in older plans, which say it as the club has it. */
  words: planWords.nullable().default(null),
});

export type DayPlan = z.infer<typeof dayPlan>;
export type PlanGroup = z.infer<typeof planGroup>;
export type PlanPlace = z.infer<typeof planPlace>;
export type PlanBlock = z.infer<typeof planBlock>;

export type Reference = z.infer<typeof reference>;
