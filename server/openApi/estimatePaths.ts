import { z } from 'zod';
import { lift } from '#contract/records/lift.ts';
import { capacityReport } from '#contract/strength/capacityReport.ts';
import { strengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { estimateProgress, strengthSummary } from '#contract/strength/strengthSummary.ts';
import { answer, object, refusal } from './answers.ts';

/** What each lifter can do, by the whole log. */
export function estimatePaths() {
  const estimates = { type: 'array', items: z.toJSONSchema(strengthEstimate, { io: 'output' }) };
  const summaries = { type: 'array', items: z.toJSONSchema(strengthSummary, { io: 'output' }) };
  const progress = z.toJSONSchema(estimateProgress, { io: 'output' });
  return {
    '/api/estimates': {
      get: {
        operationId: 'estimate.lifter',
        summary: 'What the whole log says of a lifter, one estimate for each lift that something is known of',
        tags,
        parameters: [
          { name: 'lifterId', in: 'query', required: true, schema: { type: 'string' } },
          {
            name: 'on',
            in: 'query',
            description: "As known on this date; without it, today by the club's clock",
            schema: { type: 'string', format: 'date' },
          },
          {
            name: 'lift',
            in: 'query',
            description: 'This lift alone: it waits for no other',
            schema: z.toJSONSchema(lift, { io: 'input' }),
          },
        ],
        responses: {
          200: answer('The estimates', object({ estimates })),
          400: refusal('No lifter is named, or the date or lift is none'),
          404: refusal('There is no such lifter'),
        },
      },
    },
    '/api/estimates/capacity': {
      get: {
        operationId: 'estimate.capacity',
        summary:
          "A lifter's work capacity in one lift over the season, each twelve weeks by their own sets, and whether it rose or fell",
        tags,
        parameters: [
          { name: 'lifterId', in: 'query', required: true, schema: { type: 'string' } },
          { name: 'lift', in: 'query', required: true, schema: z.toJSONSchema(lift, { io: 'input' }) },
        ],
        responses: {
          200: answer('Capacity, stretch by stretch', z.toJSONSchema(capacityReport, { io: 'output' })),
          400: refusal('No lifter or no lift is named'),
          404: refusal('There is no such lifter, or nothing is logged of the lift'),
        },
      },
    },
    '/api/estimates/all': {
      get: {
        operationId: 'estimate.club',
        summary:
          'Estimates of everybody in short, as far as they are known; the rest is worked out meanwhile',
        tags,
        responses: {
          200: answer('What is known by now', object({ estimates: summaries, progress })),
          400: refusal('A field is given; there is none here'),
        },
      },
    },
    '/api/estimates/progress': {
      get: {
        operationId: 'estimate.progress',
        summary: 'How far the estimates of the whole club are',
        tags,
        responses: { 200: answer('Lifts done, of how many', progress) },
      },
    },
  };
}

const tags = ['log'];
