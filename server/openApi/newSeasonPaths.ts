import { z } from 'zod';
import { moreLifters, newSeason } from '#contract/season/newSeason.ts';
import { answer, body, inPath, object, refusal, seqSchema } from './answers.ts';

/** The routes that put a season together as path items. */
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
    '/api/seasons/{id}/lifters': {
      parameters: [inPath('id', 'string')],
      post: {
        operationId: 'season.join',
        summary: 'More lifters for a season, all of them for the same meets, by one change',
        tags: ['season'],
        requestBody: body(z.toJSONSchema(moreLifters, { io: 'input' })),
        responses: {
          201: answer('The change', object({ seq: seqSchema })),
          400: refusal('A field is wrong, or there is no such season; nobody was added'),
          409: refusal('One of them is in it already; nobody was added'),
        },
      },
    },
  };
}
