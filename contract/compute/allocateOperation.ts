import { z } from 'zod';
import { allocate } from '#core/day/allocate.ts';
import { rankLifters } from '#core/day/rankLifters.ts';
import { timeSpent } from '#core/day/timeSpent.ts';
import { fittedOnce } from './bandShape.ts';
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
  weight: positive.max(1000).default(1).describe('How much the misfit of this lifter counts'),
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
    bandChange_s: notNegative
      .max(3600)
      .default(60)
      .describe('Time to take one pair of bands off or put one on'),
    oneSetPull: z
      .number()
      .min(0)
      .max(1)
      .default(0.5)
      .describe('0: each their own bands; 1: one set for the whole rack'),
    safeStretchRatio,
    bounds: bounds.optional(),
    timeLimit_s: positive.max(600).default(4).describe('After this the best so far is given, with its gap'),
  }),
  outputSchema: z.object({
    lifters: z.array(setup.extend({ lifterId: z.string(), zone })),
    misfit: z.number().describe('Weighted sum over the lifters'),
    racks: z.array(z.object({ rackId: z.string(), changes: z.number(), handling_s: z.number() })),
    total: z.number().describe('Misfit and handling together: what was made least'),
    proof: z
      .object({
        status: z.enum(['optimal', 'timeLimit']),
        bound: z.number(),
        gap: z.number(),
        setsLeftOut: z.number(),
      })
      .describe(
        'setsLeftOut: sets of a very large stock that were not tried one by one; the bound holds for them',
      ),
    clashes: z
      .array(z.object({ id: z.string(), sort: z.enum(['bandPair', 'chainPair']) }))
      .describe('What fixed choices hang at more racks at once than there is of it'),
    warnings: readingWarnings,
  }),
  run(input, clock) {
    refuseTwice(
      input.racks.map(({ rackId }) => rackId),
      (index) => `racks[${index}].rackId`,
    );
    const spent = timeSpent(clock, 1000 * input.timeLimit_s);
    const toCurves = fittedOnce();
    const racks = input.racks.map((rack, index) => toRackGear(rack.gear, `racks[${index}].gear`, toCurves));
    const given = input.lifters.map((lifter, index) => {
      const at = input.racks.findIndex(({ rackId }) => rackId === lifter.rackId);
      const rack = racks[at];
      const field = `lifters[${index}]`;
      if (!rack) {
        const message = `${field}.rackId is "${lifter.rackId}"; it must be the rackId of one of the racks.`;
        throw new InputError({ field: `${field}.rackId`, message });
      }
      return { task: toTask(lifter), rack: at, fixed: toFixed(lifter.fixed, rack, `${field}.fixed`) };
    });
    const lifters = rankLifters(given, racks, toRules(input), spent).map((ranked, index) => {
      const { rack, fixed } = given[index]!;
      if ('ranking' in ranked) {
        const { weight } = input.lifters[index]!;
        return { rack, ranking: ranked.ranking, weight, setFixed: fixed.set !== null };
      }
      const field = `lifters[${index}]`;
      const message = `${field} has no setup that can be reckoned with: ${ranked.reason}; check its capability, heights and aim.`;
      throw new InputError({ field, message });
    });
    const allocation = allocate({
      racks,
      lifters,
      bandChangeMinutes: input.bandChange_s / 60,
      oneSetPull: input.oneSetPull,
      outOfTime: () => spent() > 1,
    });
    return {
      lifters: lifters.flatMap(({ rack }, index) => {
        const chosen = allocation.chosen[index];
        const asked = input.lifters[index];
        const { task } = given[index]!;
        if (!chosen || !asked) return [];
        const zone = fromOutlook(asked, task, racks[rack]!, chosen);
        return [{ lifterId: asked.lifterId, ...fromSetup(chosen, racks[rack]!), ...(zone && { zone }) }];
      }),
      misfit: allocation.misfit,
      racks: input.racks.flatMap(({ rackId }, index) => {
        const rack = allocation.racks[index];
        return rack ? [{ rackId, changes: rack.changes, handling_s: rack.handlingMinutes * 60 }] : [];
      }),
      total: allocation.total,
      proof: allocation.proof,
      clashes: allocation.clashes,
      ...warningsOfGear(input.racks.map(({ gear }, index) => ({ gear, field: `racks[${index}].gear` }))),
    };
  },
});
