import { z } from 'zod';
import { evidenceReport } from '#contract/evidence/evidenceReport.ts';
import { answer, refusal } from './answers.ts';

/** What the log says of the club's rules of thumb. */
export function evidencePaths() {
  return {
    '/api/evidence': {
      get: {
        operationId: 'evidence.all',
        summary: 'What carried over to the platform, by the club and lifter by lifter, with its intervals',
        tags: ['log'],
        parameters: [
          {
            name: 'lifterId',
            in: 'query',
            description: 'Beside the club only this lifter',
            schema: { type: 'string' },
          },
          {
            name: 'label',
            in: 'query',
            description: 'By those who have this label alone; without lifterId',
            schema: { type: 'string' },
          },
        ],
        responses: {
          200: answer('The questions and their answers', z.toJSONSchema(evidenceReport, { io: 'output' })),
          400: refusal('A field is unknown, or lifterId and label are both there'),
          404: refusal('There is no such lifter, or none with that label'),
        },
      },
    },
  };
}
