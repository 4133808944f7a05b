import { z } from 'zod';
import { operation } from '#contract/compute/Operation.ts';
import { method } from '#contract/records/method.ts';
import { seasonAsk, seasonPlan } from '#contract/season/seasonPlan.ts';
import { seasonWarningSentence } from '#contract/season/seasonWarningSentence.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { weekSentences } from '#contract/season/weekSentences.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { planSeason } from './planSeason.ts';

export const planSeasonOperation = operation({
  name: 'plan-season',
  summary:
    'A season by a method: phases backwards from each meet, weeks and days with aims and sets, and what to look at.',
  inputSchema: z
    .strictObject({
      method: method.optional().describe('A whole method'),
      shipped: z
        .enum(shippedMethods.map(({ id }) => id))
        .optional()
        .describe('Instead of it: one that comes with the program, by its id'),
      season: seasonAsk,
    })
    .check(({ value, issues }) => {
      if ((value.method === undefined) === (value.shipped === undefined))
        issues.push({
          code: 'custom',
          path: ['method'],
          message: 'it must be there, or shipped in its place, not both',
          input: value.method,
        });
    }),
  outputSchema: seasonPlan.extend({
    weeks: z.array(seasonPlan.shape.weeks.element.extend({ says: z.array(z.string()) })),
    warnings: z.array(z.object({ code: z.string(), says: z.string() })),
  }),
  run({ method: given, shipped, season }) {
    const asked = given ?? shippedMethods.find(({ id }) => id === shipped)!;
    const plan = planSeason(asked, season, STANDARD_GRAVITY_MPS2);
    return {
      ...plan,
      weeks: plan.weeks.map((week, at) => ({ ...week, says: weekSentences(asked, plan, at) })),
      warnings: plan.warnings.map((warning) => ({ ...warning, says: seasonWarningSentence(warning) })),
    };
  },
});
