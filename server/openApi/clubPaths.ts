import { z } from 'zod';
import { archiveLook } from '#contract/archive/archiveLook.ts';
import { archiveShape } from '#contract/archive/archiveShape.ts';
import { clubChanges, clubState } from '#contract/changes/clubState.ts';
import { doneChanges } from '#contract/changes/doneChange.ts';
import { answer, body, inPath, inQuery, object, refusal, seqSchema } from './answers.ts';

/** The routes that are about the club as a whole. */
export function clubPaths() {
  const archive = z.toJSONSchema(archiveShape, { io: 'output' });
  const club = z.toJSONSchema(clubState, { io: 'output' });
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
          'The number of the last change as changes are made, several told as one where they follow each other closely, and when estimates became better without one; resumes after the header Last-Event-ID or ?after=',
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
            'Server-sent events "now", "change", "estimates", "copies" (a snapshot was taken, or could not be), "work" (how far a day or the evidence is) and "trouble" (why nothing can be saved, or null)',
            { type: 'string' },
            'text/event-stream',
          ),
          400: refusal('after is no number of a change'),
        },
      },
    },
    '/api/changes': {
      get: {
        operationId: 'club.done',
        summary:
          'What was done, newest first, each with whether it is taken back and why it cannot be; and the change that is undone, or done again, next: by its number at /api/undo',
        tags: ['club'],
        parameters: [
          { name: 'before', in: 'query', schema: seqSchema, description: 'Only those before this number' },
          {
            name: 'most',
            in: 'query',
            schema: { type: 'integer', minimum: 1, maximum: 200 },
            description: 'At most so many; 50 where nothing is said',
          },
        ],
        responses: {
          200: answer('A page of what was done', z.toJSONSchema(doneChanges, { io: 'output' })),
          400: refusal('before or most is no such number'),
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
  };
}

function archiveTried() {
  const look = z.toJSONSchema(archiveLook, { io: 'output' });
  return object({ dryRun: { const: true }, archive: look, here: look });
}

function standingAt(name: string, schema: object) {
  return { name, in: 'query', required: true, schema };
}
