import { z } from 'zod';
import { gearWarning } from '#contract/season/gearWarning.ts';
import { answer, object } from './answers.ts';

/** Racks and bands against all seasons. */
export function gearAheadPaths() {
  return {
    '/api/seasons/gear': {
      get: {
        operationId: 'season.gear',
        summary:
          'Where racks, bands and the hour do not do for what the seasons ask from today on, and what mends it',
        tags: ['season'],
        responses: {
          200: answer(
            'Faults, the soonest first; none where everything does',
            object({ warnings: z.toJSONSchema(z.array(gearWarning), { io: 'output' }) }),
          ),
        },
      },
    },
  };
}
