import { z } from 'zod';
import { nearDay } from '#contract/season/nearDay.ts';
import { strengthAhead } from '#contract/season/strengthAhead.ts';
import { answer, inPath, refusal } from './answers.ts';

/** What is known today of the weeks ahead of a lifter. */
export function nearDayPaths() {
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
    '/api/seasons/{id}/lifters/{lifterId}/days/{date}': {
      parameters: [...of, inPath('date', 'string')],
      get: {
        operationId: 'season.nearDay',
        summary: 'A near day for one lifter, worked out to bar and bands on what is known today',
        tags,
        responses: {
          200: answer(
            'Null: it is not near, past, lifted already, or that lifter does not train',
            shape(nearDay.nullable()),
          ),
          400: refusal('That is no date'),
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
