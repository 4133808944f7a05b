import { z } from 'zod';
import { shapeFrom } from '#core/lifter/lifterCapability.ts';
import { populationShape } from '#core/lifter/populationShape.ts';
import { capabilityWithoutStrength, fromShape, range } from './capabilityShape.ts';
import { fields, positive } from './fields.ts';
import { operation } from './Operation.ts';

/** The start as documents name it. A dead stop is one on pins: nothing of the stretch is left. */
const startWays = { free: 'free', deadStop: 'pins', box: 'box', paused: 'paused' } as const;

export const populationOperation = operation({
  name: 'population',
  summary: 'What most lifters can push in a lift from a start, by its shape; strength_N is left open.',
  inputSchema: fields({
    lift: z.enum(['squat', 'bench', 'deadlift']),
    start: z.enum(['free', 'deadStop', 'box', 'paused']),
    bodyMass_kg: positive,
    range,
  }),
  outputSchema: z.object({ capability: capabilityWithoutStrength }),
  run({ lift, start, bodyMass_kg, range }) {
    const shape = shapeFrom(populationShape(lift), startWays[start]);
    return { capability: { ...fromShape(shape, bodyMass_kg), range } };
  },
});
