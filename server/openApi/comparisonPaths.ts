import { z } from 'zod';
import { comparisonOutlook } from '#contract/comparison/comparisonOutlook.ts';
import { comparisonWish, newComparison } from '#contract/comparison/comparisonWish.ts';
import { toldComparison } from '#contract/comparison/toldComparison.ts';
import { comparison } from '#contract/records/comparison.ts';
import { answer, body, inPath, object, refusal, seqSchema } from './answers.ts';

/** Two ways of training compared by lot. The records themselves are among the others, under /api/records/comparison. */
export function comparisonPaths() {
  return {
    '/api/comparisons/outlook': {
      post: {
        operationId: 'comparison.outlook',
        summary:
          'What could be seen of a comparison before anybody starts, and who would be paired with whom; nothing is changed',
        tags,
        requestBody: body(z.toJSONSchema(comparisonWish, { io: 'input' })),
        responses: {
          200: answer('What could be seen, and who cannot be drawn', shape(comparisonOutlook)),
          400: refusal('A field is wrong, or the first day has passed'),
        },
      },
    },
    '/api/comparisons': {
      post: {
        operationId: 'comparison.draw',
        summary: 'Draw who gets which of two ways, and keep it',
        description:
          'By chance, or by the seed that is given; the seed is kept, so that anybody can draw it again.',
        tags,
        requestBody: body(z.toJSONSchema(newComparison, { io: 'input' })),
        responses: {
          201: answer('As it was drawn', object({ comparison: shape(comparison.shape), seq: seqSchema })),
          400: refusal('A field is wrong, or the first day has passed; nothing was drawn'),
          409: refusal('Fewer than two can be drawn, or something else stands against it; nothing was drawn'),
        },
      },
    },
    '/api/comparisons/{id}': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'comparison.told',
        summary: 'What was foretold of a comparison, and what it shows by now',
        tags,
        responses: {
          200: answer('Everybody counted by the way drawn', shape(toldComparison)),
          404: refusal('There is no such comparison'),
        },
      },
    },
  };
}

const tags = ['comparison'];

function shape(of: z.ZodType): object {
  return z.toJSONSchema(of, { io: 'output' });
}
