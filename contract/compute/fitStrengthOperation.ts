import { z } from 'zod';
import { fitStrength } from '#core/rep/fitStrength.ts';
import { capabilityWithoutStrength, toCapability } from './capabilityShape.ts';
import { fields } from './fields.ts';
import { InputError } from './InputError.ts';
import { load, toLoad } from './loadShape.ts';
import { refuseNothingToMove } from './nothingToMove.ts';
import { operation } from './Operation.ts';

export const fitStrengthOperation = operation({
  name: 'fit-strength',
  summary: 'The strength for which this load is just a maximum; strength_N of the capability is ignored.',
  inputSchema: fields({ load, capability: capabilityWithoutStrength }).superRefine(refuseNothingToMove),
  outputSchema: z.object({ strength_N: z.number() }),
  run(input) {
    const load = toLoad(input.load);
    const capability = toCapability({ ...input.capability, strength_N: 1 }, load);
    try {
      return { strength_N: fitStrength(load, capability) };
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new InputError({ field: 'load', message: `load cannot be a maximum: ${error.message}.` });
    }
  },
});
