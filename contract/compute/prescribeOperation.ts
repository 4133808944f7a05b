import { z } from 'zod';
import { explain } from '#core/day/explain.ts';
import type { RackGear } from '#core/day/Gear.ts';
import { type PrescribedSetup, prescribe } from '#core/day/prescribe.ts';
import { explanation, fromExplanation } from './explanationShape.ts';
import { fields } from './fields.ts';
import { fixed, fromGearSet, gear, setFields, toFixed, toRackGear } from './gearShape.ts';
import { operation } from './Operation.ts';
import { checkTask, taskFields, toTask } from './taskShape.ts';

/** A bar with its bands and chains, and how far it is from the aim. */
export const setup = z.object({ ...setFields, bar_kg: z.number(), misfit: z.number() });

export const prescribeOperation = operation({
  name: 'prescribe',
  summary: 'The loadable bar, bands and chains that come nearest to the aim for one lifter, and why.',
  inputSchema: fields({
    ...taskFields,
    gear,
    fixed: fixed.optional(),
    safeStretchRatio: z.number().min(1).default(2.5).describe('Stretch beyond which a band is flagged'),
    pairMismatchShare: z
      .number()
      .positive()
      .default(0.05)
      .describe('Difference within a pair that is flagged'),
  }).superRefine(checkTask),
  outputSchema: z.object({
    best: setup,
    explanation,
    runnersUp: z.array(setup).describe('The next best, at most five'),
    setsCompared: z.number(),
  }),
  run(input) {
    const task = toTask(input);
    const rack = toRackGear(input.gear, 'gear');
    const { best, runnersUp, setsCompared } = prescribe(task, rack, {
      fixed: toFixed(input.fixed, rack, 'fixed'),
    });
    const limits = { safeStretch: input.safeStretchRatio, mismatchShare: input.pairMismatchShare };
    return {
      best: fromSetup(best, rack),
      explanation: fromExplanation(explain(task, rack, best.set, best.barKg, limits)),
      runnersUp: runnersUp.map((one) => fromSetup(one, rack)),
      setsCompared,
    };
  },
});

export function fromSetup({ set, barKg, misfit }: PrescribedSetup, rack: RackGear): z.input<typeof setup> {
  return { ...fromGearSet(set, rack), bar_kg: barKg, misfit };
}
