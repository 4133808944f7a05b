import { z } from 'zod';
import { simulateRep } from '#core/rep/simulateRep.ts';
import { capability, toCapability } from './capabilityShape.ts';
import { fields } from './fields.ts';
import { load, toLoad } from './loadShape.ts';
import { refuseNothingToMove } from './nothingToMove.ts';
import { operation } from './Operation.ts';
import { refuseTooWeakToStart } from './weakerThanBody.ts';

export const repOperation = operation({
  name: 'rep',
  summary: 'One rep from rest at the bottom: made or missed, how long, how fast, where slowest.',
  inputSchema: fields({
    load,
    capability,
    samples: z.int().min(2).max(100_000).optional().describe('Points along the rep, evenly spaced in time'),
  })
    .superRefine(refuseNothingToMove)
    .superRefine(refuseTooWeakToStart),
  outputSchema: z.object({
    made: z.boolean(),
    duration_s: z.number().describe('Until lockout, or until the bar stood still'),
    meanSpeed_mps: z.number(),
    peakSpeed_mps: z.number(),
    slowest: z.object({ s: z.number().describe("On the capability's own range"), speed_mps: z.number() }),
    stoppedAt: z.object({ s: z.number(), t_s: z.number() }).nullable(),
    samples: z
      .array(
        z.object({
          t_s: z.number(),
          s: z.number(),
          speed_mps: z.number(),
          lifter_N: z.number(),
          load_N: z.number(),
        }),
      )
      .optional(),
  }),
  run(input) {
    const load = toLoad(input.load);
    const rep = simulateRep(load, toCapability(input.capability, load), { samples: input.samples ?? 0 });
    return {
      made: rep.made,
      duration_s: rep.durationS,
      meanSpeed_mps: rep.meanSpeedMps,
      peakSpeed_mps: rep.peakSpeedMps,
      slowest: { s: rep.slowest.s, speed_mps: rep.slowest.speedMps },
      stoppedAt: rep.stoppedAt && { s: rep.stoppedAt.s, t_s: rep.stoppedAt.tS },
      ...(input.samples === undefined
        ? {}
        : {
            samples: rep.samples.map((sample) => ({
              t_s: sample.tS,
              s: sample.s,
              speed_mps: sample.speedMps,
              lifter_N: sample.lifterN,
              load_N: sample.loadN,
            })),
          }),
    };
  },
});
