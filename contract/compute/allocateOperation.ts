import { z } from 'zod';
import { allocate } from '#core/day/allocate.ts';
import { rankSetups } from '#core/day/rankSetups.ts';
import { fields, notNegative, positive } from './fields.ts';
import { fixed, gear, refuseTwice, toFixed, toRackGear } from './gearShape.ts';
import { InputError } from './InputError.ts';
import { operation } from './Operation.ts';
import { bounds, fromSetup, safeStretchRatio, setup, toRules } from './prescribeOperation.ts';
import { readingWarnings, warningsOfGear } from './readingWarnings.ts';
import { checkTask, fromOutlook, taskFields, toTask, zone } from './taskShape.ts';

const id = z.string().min(1).max(64);

const lifter = fields({
  lifterId: id,
  rackId: id,
  ...taskFields,
  weight: positive.default(1).describe('How much the misfit of this lifter counts'),
  fixed: fixed.optional(),
}).superRefine(checkTask);

export const allocateOperation = operation({
  name: 'allocate',
  summary:
    'Bands, chains and bars for all lifters at once, from one stock: nobody needs what hangs elsewhere.',
  inputSchema: fields({
    racks: z
      .array(fields({ rackId: id, gear }))
      .min(1)
      .max(12),
    lifters: z.array(lifter).min(1).max(60).describe('In lifting order; those of one rack take turns'),
    bandChange_s: notNegative.default(60).describe('Time to take one pair of bands off or put one on'),
    oneSetPull: z
      .number()
      .min(0)
      .max(1)
      .default(0.5)
      .describe('0: each their own bands; 1: one set for the whole rack'),
    safeStretchRatio,
    bounds: bounds.optional(),
    timeLimit_s: positive.max(600).default(20),
  }),
  outputSchema: z.object({
    lifters: z.array(setup.extend({ lifterId: z.string(), zone })),
    misfit: z.number().describe('Weighted sum over the lifters'),
    racks: z.array(z.object({ rackId: z.string(), changes: z.number(), handling_s: z.number() })),
    total: z.number().describe('Misfit and handling together: what was made least'),
    proof: z.object({ status: z.enum(['optimal', 'timeLimit']), bound: z.number(), gap: z.number() }),
    clashes: z
      .array(z.object({ id: z.string(), sort: z.enum(['bandPair', 'chainPair']) }))
      .describe('What fixed choices hang at more racks at once than there is of it'),
    warnings: readingWarnings,
  }),
  run(input) {
    refuseTwice(
      input.racks.map(({ rackId }) => rackId),
      (index) => `racks[${index}].rackId`,
    );
    const endMs = Date.now() + input.timeLimit_s * 1000;
    const racks = input.racks.map((rack, index) => toRackGear(rack.gear, `racks[${index}].gear`));
    const lifters = input.lifters.map((lifter, index) => {
      const at = input.racks.findIndex(({ rackId }) => rackId === lifter.rackId);
      const rack = racks[at];
      const field = `lifters[${index}]`;
      if (!rack) {
        const message = `${field}.rackId is "${lifter.rackId}"; it must be the rackId of one of the racks.`;
        throw new InputError({ field: `${field}.rackId`, message });
      }
      const chosen = toFixed(lifter.fixed, rack, `${field}.fixed`);
      const task = toTask(lifter);
      const ranking = rankSetups(task, rack, chosen, toRules(input));
      return { rack: at, gear: rack, task, ranking, weight: lifter.weight, setFixed: chosen.set !== null };
    });
    const allocation = allocate({
      racks,
      lifters,
      bandChangeMinutes: input.bandChange_s / 60,
      oneSetPull: input.oneSetPull,
      outOfTime: () => Date.now() > endMs,
    });
    const { status, bound, gap } = allocation.proof;
    return {
      lifters: lifters.flatMap(({ gear: rack, task }, index) => {
        const chosen = allocation.chosen[index];
        const asked = input.lifters[index];
        if (!chosen || !asked) return [];
        const zone = fromOutlook(asked, task, rack, chosen);
        return [{ lifterId: asked.lifterId, ...fromSetup(chosen, rack), ...(zone && { zone }) }];
      }),
      misfit: allocation.misfit,
      racks: input.racks.flatMap(({ rackId }, index) => {
        const rack = allocation.racks[index];
        return rack ? [{ rackId, changes: rack.changes, handling_s: rack.handlingMinutes * 60 }] : [];
      }),
      total: allocation.total,
      proof: { status, bound, gap },
      clashes: allocation.clashes,
      ...warningsOfGear(input.racks.map(({ gear }, index) => ({ gear, field: `racks[${index}].gear` }))),
    };
  },
});
