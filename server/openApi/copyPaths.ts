import { z } from 'zod';
import { archiveLook } from '#contract/archive/archiveLook.ts';
import { archiveShape } from '#contract/archive/archiveShape.ts';
import { keptCopies, keptCopy } from '#contract/archive/keptCopy.ts';
import { answer, inPath, object, refusal, seqSchema } from './answers.ts';

/** The routes of copies of the whole club: snapshots, and what was there until another club took its place. */
export function copyPaths() {
  const copy = z.toJSONSchema(keptCopy, { io: 'output' });
  const look = z.toJSONSchema(archiveLook, { io: 'output' });
  const parameters = [inPath('name', 'string')];
  const missing = refusal('There is no copy of that name');
  return {
    '/api/copies': {
      get: {
        operationId: 'copies.all',
        summary: 'Every copy of the club that is kept, newest first',
        tags: ['copies'],
        responses: { 200: answer('The copies', z.toJSONSchema(keptCopies, { io: 'output' })) },
      },
      post: {
        operationId: 'copies.take',
        summary: 'Take a snapshot of the club as it is now',
        tags: ['copies'],
        responses: {
          201: answer('The snapshot, checked and on the disk', copy),
          409: refusal('The disk or the file of the club does not allow it'),
        },
      },
    },
    '/api/copies/{name}': {
      parameters,
      get: {
        operationId: 'copies.read',
        summary: 'A copy as an archive',
        tags: ['copies'],
        responses: {
          200: answer('The archive', z.toJSONSchema(archiveShape, { io: 'output' })),
          404: missing,
        },
      },
      delete: {
        operationId: 'copies.remove',
        summary: 'Remove a copy for good',
        tags: ['copies'],
        responses: { 204: { description: 'It is removed' }, 404: missing },
      },
    },
    '/api/copies/{name}/look': {
      parameters,
      get: {
        operationId: 'copies.look',
        summary: 'What a copy holds, beside what the club holds now',
        tags: ['copies'],
        responses: {
          200: answer('What both hold', object({ archive: look, here: look })),
          404: missing,
          409: refusal('The copy cannot be read'),
        },
      },
    },
    '/api/copies/{name}/restore': {
      parameters,
      post: {
        operationId: 'copies.restore',
        summary: 'Put a copy in the place of the whole club; what was there is kept as another copy',
        tags: ['copies'],
        responses: {
          200: answer('The club is replaced', object({ seq: seqSchema, keptAs: { type: 'string' } })),
          400: refusal('The copy is no club archive; nothing was changed'),
          404: missing,
        },
      },
    },
  };
}
