import { z } from 'zod';
import { seasonOffer, takenHead, takenSeason, takingAsked } from '#contract/season/seasonOffer.ts';
import { answer, body, inPath, refusal } from './answers.ts';

/** The plan of a season: as the records ask for it, as it was taken. */
export function seasonPaths() {
  const shape = (of: z.ZodType) => z.toJSONSchema(of, { io: 'output' });
  const tags = ['season'];
  return {
    '/api/seasons/{id}/plan': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'season.plan',
        summary: 'A season as the records ask for it now, what was taken, and how they differ',
        tags,
        responses: {
          200: answer('The plan for everybody in it', shape(seasonOffer)),
          404: refusal('There is no such season'),
        },
      },
    },
    '/api/seasons/{id}/taken': {
      parameters: [inPath('id', 'string')],
      post: {
        operationId: 'season.take',
        summary: 'Take the plan as it is now, or one that was taken before, under the next number',
        tags,
        requestBody: body(z.toJSONSchema(takingAsked, { io: 'input' })),
        responses: {
          201: answer('Under which number it is kept', shape(takenHead)),
          400: refusal('The body is not as described'),
          404: refusal('There is no such season, or no plan of that number'),
          409: refusal('That plan cannot be taken'),
        },
      },
    },
    '/api/seasons/{id}/taken/{number}': {
      parameters: [inPath('id', 'string'), inPath('number', 'integer')],
      get: {
        operationId: 'season.taken',
        summary: 'A plan as it was taken',
        tags,
        responses: {
          200: answer('The plan', shape(takenSeason)),
          404: refusal('There is no such season, or no plan of that number'),
        },
      },
    },
  };
}
