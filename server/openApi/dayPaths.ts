import { z } from 'zod';
import { changedRecord } from '#contract/day/changedRecord.ts';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { lastTime } from '#contract/day/lastTime.ts';
import { signedPrescription, standingPrescription } from '#contract/day/signedPrescription.ts';
import { answer, body, inPath, object, refusal } from './answers.ts';

/** The routes that are about a training day's loads. */
export function dayPaths() {
  const now = standingPrescription.extend({ document: dayPlan });
  const solved = answer('What was solved', z.toJSONSchema(now, { io: 'output' }));
  const last = z.toJSONSchema(standingPrescription, { io: 'output' });
  return {
    '/api/days/{id}/solve': {
      parameters: [inPath('id', 'string')],
      post: {
        operationId: 'day.solve',
        summary: 'Solve a training day and keep what was solved',
        tags: ['day'],
        responses: {
          200: solved,
          404: refusal('There is no such day'),
          409: refusal('The records lack what it takes'),
        },
      },
    },
    '/api/days/{id}/outlook': {
      parameters: [inPath('id', 'string')],
      post: {
        operationId: 'day.outlook',
        summary: 'What would be solved for a training day as everything is now; nothing is kept',
        tags: ['day'],
        responses: {
          200: answer('The plan', object({ document: z.toJSONSchema(dayPlan, { io: 'output' }) })),
          404: refusal('There is no such day'),
          409: refusal('The records lack what it takes'),
        },
      },
    },
    '/api/days/{id}/changed': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.changed',
        summary: 'Which records that a day rests on were changed since it was solved last',
        tags: ['day'],
        responses: {
          200: answer(
            'The records, each once; none where nothing was solved yet',
            object({ changes: { type: 'array', items: z.toJSONSchema(changedRecord, { io: 'output' }) } }),
          ),
          404: refusal('There is no such day'),
        },
      },
    },
    '/api/days/{id}/prescription': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.prescription',
        summary: 'What was solved last for a training day',
        tags: ['day'],
        responses: {
          200: answer('What was solved; null: nothing yet', { anyOf: [last, { type: 'null' }] }),
          404: refusal('There is no such day'),
        },
      },
    },
    '/api/days/{id}/retelling': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.retelling',
        summary:
          'Whom the log could tell of by now, where the last plan of a day was solved before their logs were worked out; answers soon, whether all are known or not, and changes nothing',
        tags: ['day'],
        responses: {
          200: answer(
            'The number of the last plan, null where there is none; ids of lifters whose speeds, chances and cautions could be told anew, of those among them who are likely to miss by their log, and of those whose log is still being worked out',
            object({
              number: { anyOf: [{ type: 'integer' }, { type: 'null' }] },
              lifters: ids,
              likelyToMiss: ids,
              awaited: ids,
            }),
          ),
          404: refusal('There is no such day'),
        },
      },
      post: {
        operationId: 'day.retell',
        summary:
          'Tell the last plan anew, with the same bars and gear, and keep that under the next number: speeds, chances and cautions by the log, or titles, notes and names as they are now',
        tags: ['day'],
        requestBody: body({
          ...object({
            number: { type: 'integer', description: 'The number of the last plan' },
            by: { type: 'string', enum: ['log', 'words'], default: 'log' },
          }),
          required: ['number'],
        }),
        responses: {
          200: solved,
          400: refusal('number is no number of a plan'),
          404: refusal('There is no such day, or nothing was solved for it'),
          409: refusal('The number is not the last one any more, or there is nothing to tell anew'),
        },
      },
    },
    '/api/days/{id}/last-time': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.lastTime',
        summary:
          "Of each lifter of a day's groups the main sets of the newest earlier day with the same lift, from the same start where there is one",
        tags: ['day'],
        responses: {
          200: answer(
            'Sets alike in setup, bar and reps; who never did the lift before is left out',
            object({ lastTimes: { type: 'array', items: z.toJSONSchema(lastTime, { io: 'output' }) } }),
          ),
          404: refusal('There is no such day'),
        },
      },
    },
    '/api/days/{id}/moved': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.moved',
        summary:
          'Whose maximum the log has moved by more than one per cent since a day was solved that has not begun; answers soon, whether all are known or not',
        tags: ['day'],
        responses: {
          200: answer(
            'Ids of lifters, and of those whose log is still being worked out',
            object({ moved: ids, awaited: ids }),
          ),
          404: refusal('There is no such day'),
        },
      },
    },
    '/api/days/{id}/prescriptions/{number}': {
      parameters: [inPath('id', 'string'), inPath('number', 'integer')],
      get: {
        operationId: 'day.earlierPrescription',
        summary: 'What was solved for a training day at an earlier time, counted from 1',
        tags: ['day'],
        responses: {
          200: answer('What was solved', z.toJSONSchema(signedPrescription, { io: 'output' })),
          404: refusal('The day has none of that number'),
        },
      },
    },
  };
}

const ids = { type: 'array', items: { type: 'string' } };
