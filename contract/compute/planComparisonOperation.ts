import { z } from 'zod';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { comparisonPlan, type NotDrawnReason } from '#contract/records/comparisonPlan.ts';
import { notOfAge } from '#contract/records/notOfAge.ts';
import { outcome } from '#contract/records/outcome.ts';
import { comparisonCautions } from '#contract/words/comparisonCautions.ts';
import type { Tell } from '#contract/words/doing.ts';
import { foretoldSentences } from '#contract/words/foretoldSentences.ts';
import { notDrawnSentence } from '#contract/words/notDrawnSentence.ts';
import { drawWays } from '#core/comparison/drawWays.ts';
import { foretellDifference } from '#core/comparison/foretellDifference.ts';
import { pairAlike } from '#core/comparison/pairAlike.ts';
import { clubScatter, type Scatter } from '#core/comparison/Scatter.ts';
import { HOPED_SHARE, hopeFor, liftersNeeded, outlookOf } from '#core/comparison/usualGain.ts';
import {
  asPercent,
  day,
  label,
  mostLifters,
  mostTests,
  refuseLate,
  refuseTwice,
  test,
  ways,
  weeks,
  weeksFrom,
} from './comparisonShape.ts';
import { fields, mass } from './fields.ts';
import { operation } from './Operation.ts';

const lifter = fields({
  lifterId: label,
  name: label.optional(),
  bornOn: day
    .nullable()
    .default(null)
    .describe('Nobody is drawn who is a minor on the first day, or of unknown age'),
  group: z.string().max(80).default('').describe('Only lifters of one group are paired: sex, equipment'),
  max_kg: mass.nullable().default(null),
  bodyMass_kg: mass.nullable().default(null),
  gain_percentAWeek: z.number().min(-5).max(5).nullable().default(null),
  restricted: z.boolean().default(false).describe('True: held to a restriction on the first day'),
  takenOut: z.boolean().default(false).describe('True: said no, or the coach says no'),
});
type Candidate = z.output<typeof lifter>;

/** The simulation is always the same; the draw goes by the seed that is given. */
const SIMULATION_SEED = 1;

export const planComparisonOperation = operation({
  name: 'plan-comparison',
  summary:
    'Two ways of training compared fairly: pairs of alike lifters, who gets which by lot, and how large a difference could be seen, before anybody starts.',
  inputSchema: fields({
    outcome,
    ways,
    startsOn: day,
    weeks,
    testEvery_weeks: z.int().min(1).max(104).default(4),
    seed: z.int().min(0).max(2_147_483_647).describe('The same seed gives the same draw'),
    leavingShare: z
      .number()
      .min(0)
      .max(0.9)
      .default(0.1)
      .describe('How many of all may leave before the end (judgement)'),
    plays: z
      .int()
      .min(50)
      .max(5000)
      .default(400)
      .describe('How often it is played through to foretell what could be seen'),
    lifters: z.array(lifter).max(mostLifters),
    past: z
      .array(fields(test))
      .max(mostTests)
      .default([])
      .describe('Tests before the start, from which the scatter of the club is taken'),
  }).superRefine(({ lifters, past, startsOn, weeks }, context) => {
    refuseLate({ startsOn, weeks }, context);
    refuseTwice(lifters, 'lifters', context);
    past.forEach(({ on }, i) => {
      if (on > startsOn)
        context.addIssue({
          code: 'custom',
          path: ['past', i, 'on'],
          message: `it must be no later than startsOn (${startsOn})`,
        });
    });
  }),
  outputSchema: comparisonPlan.extend({ sentences: z.array(z.string()), cautions: z.array(z.string()) }),
  run(
    { outcome, ways, startsOn, weeks, testEvery_weeks, seed, leavingShare, plays, lifters, past },
    _clock,
    tell,
  ) {
    const nameOf = new Map(lifters.map(({ lifterId, name }) => [lifterId, name ?? lifterId]));
    const judged = lifters.map((one) => ({ one, reason: whyNot(one, startsOn) }));
    const paired = pairAlike(judged.flatMap(({ one, reason }) => (reason === null ? [asAlike(one)] : [])));
    const pairOf = new Map(
      paired.pairs.flatMap(({ lifterIds }, i) => lifterIds.map((id) => [id, i + 1] as const)),
    );
    const drawn = drawWays(paired, seed);
    const testWeeks = testWeeksOf(weeks, testEvery_weeks);
    const scatter = clubScatter(
      past
        .map(({ lifterId, on, value_kg }) => ({
          lifterId,
          week: weeksFrom(startsOn, on),
          lnValue: Math.log(value_kg),
        }))
        .filter(({ week }) => week >= -weeks),
      weeks,
    );
    const second = [...drawn.values()].filter((way) => way === 1).length;
    const onDay = (week: number) => dateOfDay(dayNumber(startsOn) + 7 * week);
    const plan = {
      outcome,
      ways,
      startsOn,
      endsOn: onDay(weeks),
      weeks,
      testOn: testWeeks.map(onDay),
      seed,
      drawn: [...drawn].map(([lifterId, way]) => ({
        lifterId,
        name: nameOf.get(lifterId)!,
        way: ways[way]!,
        pair: pairOf.get(lifterId) ?? null,
      })),
      notDrawn: judged.flatMap(({ one: { lifterId }, reason }) =>
        reason === null ? [] : [{ lifterId, name: nameOf.get(lifterId)!, reason }],
      ),
      scatter: {
        known: scatter.known,
        gainSd_percentAWeek: asPercent(scatter.gainSd),
        testSd_percent: asPercent(scatter.testSd),
        lifters: scatter.lifters,
        tests: scatter.tests,
      },
      foretold: foretold([drawn.size - second, second], testWeeks, scatter, leavingShare, plays, tell),
    };
    return {
      ...plan,
      sentences: [...foretoldSentences(plan), ...plan.notDrawn.map(notDrawnSentence)],
      cautions: [...comparisonCautions],
    };
  },
});

function whyNot({ takenOut, bornOn, restricted }: Candidate, startsOn: string): NotDrawnReason | null {
  if (takenOut) return 'takenOut';
  return notOfAge(bornOn, startsOn) ?? (restricted ? 'restricted' : null);
}

/** Strength and body mass count by their ratios. */
function asAlike({ lifterId, group, max_kg, bodyMass_kg, gain_percentAWeek }: Candidate) {
  return { lifterId, block: group, traits: [lnOf(max_kg), lnOf(bodyMass_kg), gain_percentAWeek] };
}

function lnOf(kg: number | null): number | null {
  return kg === null ? null : Math.log(kg);
}

/** From the start to the end, both counted. */
function testWeeksOf(weeks: number, every: number): number[] {
  const between = Array.from({ length: Math.ceil(weeks / every) }, (_, i) => i * every);
  return [...between, weeks];
}

function foretold(
  lifters: readonly [number, number],
  testWeeks: readonly number[],
  scatter: Scatter,
  leavingShare: number,
  plays: number,
  tell: Tell,
) {
  const hope = hopeFor(testWeeks.at(-1)!, scatter.gainPerWeek);
  const { detectableLn, errorLn, chanceToSee } = foretellDifference({
    lifters,
    testWeeks,
    scatter,
    leavingShare,
    seed: SIMULATION_SEED,
    plays,
    told: (done) => tell(done, plays, { code: 'playing', at: done + 1, of: plays }),
  });
  return {
    detectable_percent: detectableLn === null ? null : asPercent(detectableLn),
    error_percent: errorLn === null ? null : 100 * errorLn,
    plays,
    leaving_percent: 100 * leavingShare,
    usualGain_percent: asPercent(hope.wholeGainLn),
    usualGainKnown: hope.known,
    chanceToSeeHalf: chanceToSee(HOPED_SHARE * hope.wholeGainLn),
    outlook: outlookOf(detectableLn, hope),
    liftersNeeded: detectableLn === null ? null : liftersNeeded(lifters[0] + lifters[1], detectableLn, hope),
  };
}
