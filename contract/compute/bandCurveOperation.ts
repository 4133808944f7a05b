import { z } from 'zod';
import { bandTensionInterval } from '#core/band/bandTension.ts';
import { checkLoop, direction, loopFields, toBandCurves } from './bandShape.ts';
import { fields, length } from './fields.ts';
import { operation } from './Operation.ts';
import { readingWarnings, warningsOfLoop } from './readingWarnings.ts';

export const bandCurveOperation = operation({
  name: 'band-curve',
  summary: 'Force of one loop at given lengths, fitted to its readings, with 95 % interval.',
  inputSchema: fields({
    ...loopFields,
    at_m: z.array(length).min(1).max(100_000).describe('End-to-end lengths of the loop'),
    direction: direction.default('loading'),
  }).superRefine(checkLoop),
  outputSchema: z.object({
    model: z.string(),
    parameters: z.record(z.string(), z.number()),
    measuredTo_m: z.number().describe('Longest length read; the rest length where nothing was read'),
    forces: z.array(
      z.object({
        length_m: z.number(),
        force_N: z.number(),
        low95_N: z.number(),
        high95_N: z.number(),
        extrapolated: z.boolean(),
      }),
    ),
    warnings: readingWarnings,
  }),
  run(input) {
    const curve = toBandCurves(input, 'readings')[input.direction];
    return {
      model: curve.model,
      parameters: Object.fromEntries(
        curve.parameterNames.map((name, i) => [jsonName(name), curve.parameters[i] ?? 0]),
      ),
      measuredTo_m: curve.measuredToM,
      forces: input.at_m.map((length_m) => {
        const { tensionN, low95N, high95N, extrapolated } = bandTensionInterval(curve, length_m);
        return { length_m, force_N: tensionN, low95_N: low95N, high95_N: high95N, extrapolated };
      }),
      ...warningsOfLoop(input),
    };
  },
});

/** `c10N` of the core is `c10_N` in a document. */
function jsonName(name: string): string {
  return name.replace(/(N|M)$/, (unit) => (unit === 'N' ? '_N' : '_m'));
}
