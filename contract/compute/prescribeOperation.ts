import { z } from 'zod';
import { speaksForSentence } from '#contract/words/speaksForSentence.ts';
import { explain } from '#core/day/explain.ts';
import type { RackGear } from '#core/day/Gear.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { prescribe } from '#core/day/prescribe.ts';
import { freeSearch, noBounds, type SearchRules } from '#core/day/SearchRules.ts';
import { timeSpent } from '#core/day/timeSpent.ts';
import { explanation, fromExplanation } from './explanationShape.ts';
import { fields } from './fields.ts';
import { fixed, fromGearSet, gear, setFields, toFixed, toRackGear } from './gearShape.ts';
import { operation } from './Operation.ts';
import { readingWarnings, warningsOfGear } from './readingWarnings.ts';
import { checkTask, fromOutlook, taskFields, toTask, zone } from './taskShape.ts';

/** Given, it is a limit of the search; left out, the usual one is flagged only. */
export const safeStretchRatio = z
  .number()
  .min(1)
  .max(20)
  .optional()
  .describe('No band is proposed beyond this stretch. Left out: any is, and flagged beyond 2.5');
const FLAGGED_STRETCH = 2.5;
/** Then the sets found so far are compared. */
const TIME_LIMIT_MS = 3000;

const share = z.number().min(0).max(2);

/** What a proposal keeps to, of `reference_kg`; what is left out is free. */
export const bounds = fields({
  leastBarShare: share.optional(),
  leastBandShare: share.optional().describe('Of all bands together at lockout, where any hang'),
  mostBandShare: share.optional(),
  mostPairs: z.int().min(0).max(3).optional(),
});

/** A bar with its bands and chains, and how far it is from the aim. */
export const setup = z.object({ ...setFields, bar_kg: z.number(), misfit: z.number() });

export const prescribeOperation = operation({
  name: 'prescribe',
  summary: 'The loadable bar, bands and chains that come nearest to the aim for one lifter, and why.',
  inputSchema: fields({
    ...taskFields,
    gear,
    fixed: fixed.optional(),
    safeStretchRatio,
    bounds: bounds.optional(),
    pairMismatchShare: z
      .number()
      .positive()
      .max(2)
      .default(0.05)
      .describe('Difference within a pair that is flagged'),
  }).superRefine(checkTask),
  outputSchema: z.object({
    best: setup,
    explanation,
    zone,
    runnersUp: z
      .array(
        setup.extend({
          speaksFor: z.array(
            z.object({
              code: z.string(),
              pieces: z.number().optional(),
              kg: z.number().optional(),
              misfitMore: z.number().optional(),
              misfitLess: z.number().optional(),
            }),
          ),
          why: z.string().describe('The same in words'),
        }),
      )
      .describe('The next best that are other proposals, at most five'),
    setsCompared: z.number(),
    warnings: readingWarnings,
    proof: z
      .object({ bound: z.number(), gap: z.number(), setsLeftOut: z.number() })
      .describe('No set has a misfit below bound, nor has one of those left out of a very large stock'),
  }),
  run(input, clock) {
    const task = toTask(input);
    const rack = toRackGear(input.gear, 'gear');
    const limits = {
      safeStretch: input.safeStretchRatio ?? FLAGGED_STRETCH,
      mismatchShare: input.pairMismatchShare,
    };
    const spent = timeSpent(clock, TIME_LIMIT_MS);
    const { best, runnersUp, setsCompared, proof } = prescribe(task, rack, {
      outOfTime: () => spent() > 1,
      fixed: toFixed(input.fixed, rack, 'fixed'),
      rules: toRules(input),
    });
    const zone = fromOutlook(input, task, rack, best);
    return {
      best: fromSetup(best, rack),
      explanation: fromExplanation(explain(task, rack, best.set, best.barKg, limits)),
      ...(zone && { zone }),
      runnersUp: runnersUp.map((one) => ({
        ...fromSetup(one, rack),
        speaksFor: one.speaksFor,
        why: speaksForSentence(one.speaksFor, (kg) => `${Number(kg.toFixed(1))} kg`),
      })),
      setsCompared,
      ...warningsOfGear([{ gear: input.gear, field: 'gear' }]),
      proof,
    };
  },
});

export function fromSetup({ set, barKg, misfit }: PrescribedSetup, rack: RackGear): z.input<typeof setup> {
  return { ...fromGearSet(set, rack), bar_kg: barKg, misfit };
}

/** The limits of the search that a document gives. */
export function toRules(given: {
  safeStretchRatio?: number | undefined;
  bounds?: z.output<typeof bounds> | undefined;
}): SearchRules {
  return {
    ...freeSearch,
    safeStretch: given.safeStretchRatio ?? freeSearch.safeStretch,
    bounds: {
      leastBarShare: given.bounds?.leastBarShare ?? noBounds.leastBarShare,
      leastBandShare: given.bounds?.leastBandShare ?? noBounds.leastBandShare,
      mostBandShare: given.bounds?.mostBandShare ?? noBounds.mostBandShare,
      mostPairs: given.bounds?.mostPairs ?? noBounds.mostPairs,
    },
  };
}
