import { z } from 'zod';
import { loadCurve } from '#core/load/loadCurve.ts';
import { fields } from './fields.ts';
import { load, toLoad } from './loadShape.ts';
import { operation } from './Operation.ts';
import { readingWarnings, warningsOfBands } from './readingWarnings.ts';

export const loadCurveOperation = operation({
  name: 'load-curve',
  summary: 'What the lifter carries at each height on the way up: bar, bands and chains.',
  inputSchema: fields({ load, points: z.int().min(2).max(100_000) }),
  outputSchema: z.object({
    points: z.array(
      z.object({
        s: z.number().describe("0 at the load's bottom, 1 at its lockout"),
        z_m: z.number(),
        total_N: z.number(),
        bar_N: z.number(),
        band_N: z.number(),
        chain_N: z.number(),
        foreAft_N: z.number().describe('Positive pulls the lifter forward'),
      }),
    ),
    bottom_N: z.number(),
    lockout_N: z.number(),
    mean_N: z.number().describe('Work over range'),
    work_J: z.number(),
    slackBelow_m: z.number().nullable().describe('Height below which every band is slack'),
    warnings: readingWarnings,
  }),
  run(input) {
    const curve = loadCurve(toLoad(input.load), input.points);
    return {
      points: curve.points.map((point) => ({
        s: point.s,
        z_m: point.zM,
        total_N: point.totalN,
        bar_N: point.barN,
        band_N: point.bandN,
        chain_N: point.chainN,
        foreAft_N: point.foreAftN,
      })),
      bottom_N: curve.bottomN,
      lockout_N: curve.lockoutN,
      mean_N: curve.meanN,
      work_J: curve.workJ,
      slackBelow_m: curve.slackBelowM,
      ...warningsOfBands(input.load.bands, 'load.bands'),
    };
  },
});
