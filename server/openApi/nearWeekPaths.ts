import { z } from 'zod';
import { nearWeek } from '#contract/season/nearWeek.ts';
import { strengthAhead } from '#contract/season/strengthAhead.ts';
import { answer, inPath, refusal } from './answers.ts';

/** What is known today of the weeks ahead of a lifter. */
export function nearWeekPaths() {
  const of = [inPath('id', 'string'), inPath('lifterId', 'string')];
  return {
    '/api/seasons/{id}/lifters/{lifterId}/ahead': {
      parameters: of,
      get: {
        operationId: 'season.strengthAhead',
        summary: 'Between what the maxima of a lifter lie week by week, by what is known today',
        tags,
        responses: {
          200: answer('Each lift of which something is known', shape(strengthAhead)),
          404: refusal('There is no such season, or that lifter is not in it'),
        },
      },
    },
    '/api/seasons/{id}/lifters/{lifterId}/weeks/{monday}': {
      parameters: [...of, inPath('monday', 'string')],
      get: {
        operationId: 'season.nearWeek',
        summary: 'The near days of a week for one lifter, worked out to bar and bands on what is known today',
        tags,
        responses: {
          200: answer('Day by day; none of a week that is past or far ahead', shape(nearWeek)),
          400: refusal('That is no Monday'),
          404: refusal('There is no such season'),
        },
      },
    },
  };
}

const tags = ['season'];

function shape(of: z.ZodType): unknown {
  return z.toJSONSchema(of, { io: 'output' });
}
