import { z } from 'zod';
import { archiveLook } from '#contract/archive/archiveLook.ts';
import { archiveShape } from '#contract/archive/archiveShape.ts';
import { clubChanges, clubState } from '#contract/changes/clubState.ts';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { signedPrescription } from '#contract/day/signedPrescription.ts';
import { answer, body, inPath, inQuery, object, refusal, seqSchema } from './answers.ts';

/** The routes that are about the club as a whole, and about its days. */
export function clubPaths() {
  const archive = z.toJSONSchema(archiveShape, { io: 'output' });
  const club = z.toJSONSchema(clubState, { io: 'output' });
  const solvedDay = z.toJSONSchema(signedPrescription.extend({ document: dayPlan }), { io: 'output' });
  const solved = answer('What was solved', solvedDay);
  return {
    '/api/club': {
      get: {
        operationId: 'club.all',
        summary: 'Every record of the club in one document',
        tags: ['club'],
        responses: {
          200: answer('The club', club),
        },
      },
    },
    '/api/club/changes': {
      get: {
        operationId: 'club.changes',
        summary:
          'Records put and removed after the change that an earlier answer stood at; every record where that does not tell: the change is none of this club, the club was replaced since, or very much was done',
        tags: ['club'],
        parameters: [
          { ...standingAt('after', seqSchema), description: '"seq" of the earlier answer' },
          {
            ...standingAt('madeAt', { type: 'string', format: 'date-time' }),
            description: '"madeAt" of the earlier answer: another history may have the same numbers',
          },
        ],
        responses: {
          200: answer('What was done since, or the club', {
            anyOf: [z.toJSONSchema(clubChanges, { io: 'output' }), club],
          }),
          400: refusal('after is no number of a change, or madeAt no instant'),
        },
      },
    },
    '/api/events': {
      get: {
        operationId: 'club.events',
        summary:
          'The number of each change as it is made, and when estimates became better without one; resumes after the header Last-Event-ID or ?after=',
        tags: ['club'],
        parameters: [
          {
            name: 'after',
            in: 'query',
            description:
              'The number of the last change that is known; the header Last-Event-ID goes before it',
            schema: seqSchema,
          },
        ],
        responses: {
          200: answer(
            'Server-sent events "now", "change" and "estimates"',
            { type: 'string' },
            'text/event-stream',
          ),
          400: refusal('after is no number of a change'),
        },
      },
    },
    '/api/undo/{seq}': {
      parameters: [inPath('seq', 'integer')],
      post: {
        operationId: 'club.undo',
        summary: 'Take a change back, as a new change',
        tags: ['club'],
        responses: {
          200: answer('The new change', object({ seq: seqSchema })),
          404: refusal('There is no such change'),
          409: refusal('What it touched was changed since'),
        },
      },
    },
    '/api/archive': {
      get: {
        operationId: 'archive.write',
        summary: 'The whole club as one archive',
        tags: ['archive'],
        responses: { 200: answer('The archive', archive) },
      },
      post: {
        operationId: 'archive.restore',
        summary: 'Put an archive in the place of the whole club; what was there is kept in a file beside it',
        tags: ['archive'],
        parameters: [
          inQuery('replace', 'Says that the club is to be replaced'),
          inQuery('dryRun', 'Says what the archive and the club hold; nothing is changed'),
        ],
        requestBody: body(archive),
        responses: {
          200: answer('The club is replaced; or, of a dry run, what the archive and the club hold', {
            anyOf: [object({ seq: seqSchema, keptAs: { type: 'string' } }), archiveTried()],
          }),
          400: refusal('The archive is wrong; nothing was changed. A dry run names every place by its line'),
        },
      },
    },
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
    '/api/days/{id}/prescription': {
      parameters: [inPath('id', 'string')],
      get: {
        operationId: 'day.prescription',
        summary: 'What was solved last for a training day',
        tags: ['day'],
        responses: {
          200: answer('What was solved; null: nothing yet', { anyOf: [solvedDay, { type: 'null' }] }),
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
          'Tell speeds, chances and cautions of the last plan by the log, with the same bars and gear, and keep that under the next number',
        tags: ['day'],
        requestBody: body(
          object({ number: { type: 'integer', description: 'The number of the last plan' } }),
        ),
        responses: {
          200: solved,
          400: refusal('number is no number of a plan'),
          404: refusal('There is no such day, or nothing was solved for it'),
          409: refusal('The number is not the last one any more, or the log has nothing to add'),
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
        responses: { 200: solved, 404: refusal('The day has none of that number') },
      },
    },
  };
}

function archiveTried() {
  const look = z.toJSONSchema(archiveLook, { io: 'output' });
  return object({ dryRun: { const: true }, archive: look, here: look });
}

function standingAt(name: string, schema: object) {
  return { name, in: 'query', required: true, schema };
}

const ids = { type: 'array', items: { type: 'string' } };
