import { z } from 'zod';
import { fallingSentence } from '#contract/words/fallingSentence.ts';
import { bandTensionInterval } from '#core/band/bandTension.ts';
import { fallingForces } from '#core/band/fallingForces.ts';
import { checkLoop, direction, loopFields, toBandCurves, toReadings } from './bandShape.ts';
import { fields, length } from './fields.ts';
import { operation } from './Operation.ts';

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
    warnings: z
      .array(z.object({ code: z.literal('fallingForce'), message: z.string() }))
      .optional()
      .describe('Readings that no band gives; absent where there are none'),
  }),
  run(input) {
    const curve = toBandCurves(input, 'readings')[input.direction];
    const warnings = fallingForces(toReadings(input)).map((fall) => ({
      code: 'fallingForce' as const,
      message: fallingSentence(fall, input.restLength_m),
    }));
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
      ...(warnings.length > 0 ? { warnings } : {}),
    };
  },
});

/** `c10N` of the core is `c10_N` in a document. */
function jsonName(name: string): string {
  return name.replace(/(N|M)$/, (unit) => (unit === 'N' ? '_N' : '_m'));
}
