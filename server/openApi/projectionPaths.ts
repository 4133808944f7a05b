import { z } from 'zod';
import { backtestReport } from '#contract/projection/backtestReport.ts';
import { liftProjection } from '#contract/projection/liftProjection.ts';
import { equipment } from '#contract/records/lift.ts';
import { estimateProgress } from '#contract/strength/strengthSummary.ts';
import { answer, object, refusal } from './answers.ts';

/** Meets ahead, and how meets behind would have been foretold. */
export function projectionPaths() {
  return {
    '/api/projection': {
      get: {
        operationId: 'projection.lifter',
        summary: "What a lifter's lifts may be on the day of a meet, with the chance of each bar",
        tags,
        parameters: [
          { name: 'lifterId', in: 'query', required: true, schema: { type: 'string' } },
          {
            name: 'on',
            in: 'query',
            required: true,
            description: 'Day of the meet, within a year from today',
            schema: { type: 'string', format: 'date' },
          },
          {
            name: 'equipment',
            in: 'query',
            description: "Without it, the lifter's own",
            schema: shape(equipment),
          },
          {
            name: 'taperPercent',
            in: 'query',
            description: 'What the last weeks are taken to add beyond what past meets show: an assumption',
            schema: { type: 'number', minimum: 0, maximum: 5, default: 0 },
          },
        ],
        responses: {
          200: answer('One for each lift', object({ projections: shape(z.array(liftProjection)) })),
          400: refusal('No lifter is named, or the date, equipment or taper is none'),
          404: refusal('There is no such lifter'),
        },
      },
    },
    '/api/backtest': {
      get: {
        operationId: 'backtest.club',
        summary:
          'Every past meet foretold from the days before it alone, with its scores; worked out behind, ask again until it is up to date',
        tags,
        responses: {
          200: answer(
            'What is known by now',
            object({
              report: shape(backtestReport.nullable()),
              workedOutAt: { type: ['string', 'null'], format: 'date-time' },
              upToDate: { type: 'boolean' },
              progress: shape(estimateProgress),
            }),
          ),
          400: refusal('A field is given; there is none here'),
        },
      },
    },
  };
}

const tags = ['log'];

function shape(schema: z.ZodType) {
  return z.toJSONSchema(schema, { io: 'output' });
}
