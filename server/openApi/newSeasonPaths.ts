import { z } from 'zod';
import { newSeason } from '#contract/season/newSeason.ts';
import { answer, body, object, refusal, seqSchema } from './answers.ts';

/** The route that makes a season as a path item. */
export function newSeasonPaths() {
  return {
    '/api/seasons': {
      post: {
        operationId: 'season.make',
        summary: 'A season with its method, meets and lifters, by one change',
        description:
          'Everybody trains for the meets that are named and those that are new. A method that comes along is kept as a record of its own.',
        tags: ['season'],
        requestBody: body(z.toJSONSchema(newSeason, { io: 'input' })),
        responses: {
          201: answer('What was made', object({ seasonId: { type: 'string' }, seq: seqSchema })),
          400: refusal('A field is wrong; nothing was made'),
          409: refusal('Something else stands against it; nothing was made'),
        },
      },
    },
  };
}
