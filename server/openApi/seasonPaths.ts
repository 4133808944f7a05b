import { z } from 'zod';
import { takenHead, takingAsked } from '#contract/season/seasonOffer.ts';
import { sentOffer, sentTaken } from '#contract/season/sentSeason.ts';
import { weekTaking } from '#contract/season/weekTaking.ts';
import { answer, body, inPath, refusal } from './answers.ts';

/** The plan of a season: as the records ask for it, as it was taken. */
export function seasonPaths() {
  return {
    '/api/seasons/{id}/plan': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'season.plan',
        summary: 'A season as the records ask for it now, what was taken, and how they differ',
        tags,
        responses: {
          200: answer('The plan for everybody in it', shape(sentOffer)),
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
    '/api/seasons/{id}/weeks/{monday}': {
      parameters: [inPath('id', 'string'), inPath('monday', 'string')],
      get: {
        operationId: 'season.week',
        summary: 'What taking a week of the plan would put on the training days; nothing is changed',
        tags,
        responses: {
          200: answer('Day by day, and what would be left alone', shape(weekTaking)),
          400: refusal('That is no Monday'),
          404: refusal('There is no such season'),
        },
      },
      post: {
        operationId: 'season.takeWeek',
        summary: 'Put the coming days of a week of the plan on the training days, as one change',
        tags,
        responses: {
          200: answer('What was done', shape(weekTaking.extend({ seq: z.number().int() }))),
          400: refusal('That is no Monday'),
          404: refusal('There is no such season'),
          409: refusal('A record that it needs was changed meanwhile'),
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
          200: answer('The plan', shape(sentTaken)),
          404: refusal('There is no such season, or no plan of that number'),
        },
      },
    },
  };
}

const tags = ['season'];

function shape(of: z.ZodType): object {
  return z.toJSONSchema(of, { io: 'output' });
}
