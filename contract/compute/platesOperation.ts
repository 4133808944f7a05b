import { z } from 'zod';
import { plates } from '#core/day/plates.ts';
import { fields, positive } from './fields.ts';
import { barAndDiscFields } from './gearShape.ts';
import { operation } from './Operation.ts';

export const platesOperation = operation({
  name: 'plates',
  summary: 'The nearest mass that the discs at hand can load, with the fewest discs a side.',
  inputSchema: fields({
    target_kg: positive.max(2000),
    ...barAndDiscFields,
  }),
  outputSchema: z.object({
    loaded_kg: z.number(),
    perSide: z
      .array(z.object({ mass_kg: z.number(), count: z.number() }))
      .describe('Discs of one side, the heaviest (innermost) first'),
  }),
  run(input) {
    const { loadedKg, perSide } = plates({
      targetKg: input.target_kg,
      barKg: input.bar_kg,
      collarsKg: input.collars_kg,
      discs: input.discs.map(({ mass_kg, pairs }) => ({ massKg: mass_kg, pairs })),
    });
    return {
      loaded_kg: loadedKg,
      perSide: perSide.map(({ massKg, count }) => ({ mass_kg: massKg, count })),
    };
  },
});
