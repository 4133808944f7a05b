import { z } from 'zod';
import { maxBar } from '#core/rep/maxBar.ts';
import { capability, toCapability } from './capabilityShape.ts';
import { fields } from './fields.ts';
import { InputError } from './InputError.ts';
import { loadWithoutBar, toLoad } from './loadShape.ts';
import { operation } from './Operation.ts';
import { refuseTooWeakToStart } from './weakerThanBody.ts';

export const maxBarOperation = operation({
  name: 'max-bar',
  summary: 'The heaviest bar that goes up with these bands and chains; bar_kg of the load is ignored.',
  inputSchema: fields({ load: loadWithoutBar, capability }).superRefine(refuseTooWeakToStart),
  outputSchema: z.object({
    bar_kg: z.number(),
    bottom_N: z.number(),
    lockout_N: z.number(),
    slowest: z.object({ s: z.number(), speed_mps: z.number() }),
  }),
  run(input) {
    const load = toLoad({ ...input.load, bar_kg: 0 });
    const best = maxBar(load, toCapability(input.capability, load));
    if (!best) {
      throw new InputError({
        field: 'load',
        message:
          'load is too heavy for this capability: with these bands and chains not even an empty bar goes up.',
      });
    }
    const { barKg, bottomN, lockoutN, slowest } = best;
    return {
      bar_kg: barKg,
      bottom_N: bottomN,
      lockout_N: lockoutN,
      slowest: { s: slowest.s, speed_mps: slowest.speedMps },
    };
  },
});
