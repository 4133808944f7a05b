import { z } from 'zod';
import { who } from '#contract/changes/who.ts';
import { allKinds, type KindName, kindNames } from '#contract/records/allKinds.ts';
import { answer, body, errorSchema, inPath, inQuery, object, refusal, seqSchema } from './answers.ts';

/** The routes of every kind of record as path items. */
export function recordPaths() {
  return Object.fromEntries(kindNames.flatMap((kind) => Object.entries(pathsOf(kind))));
}

function pathsOf(kind: KindName) {
  const { word } = allKinds[kind];
  const shape: z.ZodObject = allKinds[kind].shape;
  const record = z.toJSONSchema(shape, { io: 'output' });
  const { id: _, ...given } = shape.shape;
  const fields = z.toJSONSchema(z.strictObject(given), { io: 'input' });
  const some = { ...fields, required: [] };
  const kept = object({ record, seq: seqSchema });
  const tags = [kind];
  return {
    [`/api/records/${kind}`]: {
      get: {
        operationId: `${kind}.list`,
        summary: `Every ${word} of the club`,
        tags,
        responses: {
          200: answer('The records', object({ records: { type: 'array', items: record } })),
          400: noFields,
        },
      },
      post: {
        operationId: `${kind}.create`,
        summary: `Add a ${word}; the id is made here`,
        tags,
        requestBody: body(fields),
        responses: { 201: answer('The record as kept', kept), 400: wrong, 409: against },
      },
    },
    [`/api/records/${kind}/{id}`]: {
      parameters: [inPath('id', 'string')],
      put: {
        operationId: `${kind}.update`,
        summary: `Replace all fields of a ${word}`,
        tags,
        requestBody: body(fields),
        responses: { 200: answer('The record as kept', kept), 400: wrong, 404: missing, 409: against },
      },
      patch: {
        operationId: `${kind}.change`,
        summary: `Change fields of a ${word}; what others changed since they were found stays`,
        description:
          'Both objects name the same fields: as they were read, and as they are to be. Changes of different fields, and of different things in lists of things with ids, are brought together.',
        tags,
        requestBody: body(object({ found: some, wanted: some })),
        responses: {
          200: answer('The record as kept', kept),
          400: wrong,
          404: missing,
          409: answer(
            'Somebody changed the same field meanwhile (clash says who, which and to what), or something else stands against it',
            { anyOf: [{ $ref: '#/components/schemas/Error' }, clashed(record)] },
          ),
        },
      },
      delete: {
        operationId: `${kind}.remove`,
        summary: `Remove a ${word} and what belongs to it`,
        tags,
        responses: {
          200: answer('The change, for undo', object({ seq: seqSchema })),
          404: missing,
          409: against,
        },
      },
    },
    [`/api/records/${kind}/csv`]: {
      get: {
        operationId: `${kind}.writeCsv`,
        summary: `Every ${word} as CSV, the units in the header`,
        tags,
        responses: { 200: answer('The file', { type: 'string' }, 'text/csv'), 400: noFields },
      },
      post: {
        operationId: `${kind}.readCsv`,
        summary: 'Take a CSV file in, whole or not at all; lines with a known id change that record',
        tags,
        parameters: [inQuery('dryRun', 'Check only; change nothing')],
        requestBody: body({ type: 'string' }, 'text/csv'),
        responses: {
          200: answer('What was taken', taken),
          400: refusal('Lines that are wrong; nothing was taken'),
        },
      },
    },
  };
}

function clashed(record: object) {
  const fields = {
    type: 'array',
    items: {
      type: 'object',
      required: ['path'],
      properties: { path: { type: 'array', items: { type: 'string' } }, theirs: {}, yours: {} },
      description: 'A side that is left out took the thing away',
    },
  };
  const by = { anyOf: [z.toJSONSchema(who), { type: 'null' }] };
  return object({ error: errorSchema.properties.error, clash: object({ record, who: by, fields }) });
}

const counts = object({
  rows: { type: 'integer' },
  added: { type: 'integer' },
  changed: { type: 'integer' },
  unchanged: { type: 'integer' },
  dryRun: { type: 'boolean' },
  seq: seqSchema,
});
const place = object({ line: { type: 'integer' }, column: { type: 'string' }, message: { type: 'string' } });
const taken = {
  ...counts,
  properties: {
    ...counts.properties,
    questions: {
      type: 'array',
      items: place,
      description: 'Lines that may be slips though they can stand, the first 50; absent where there are none',
    },
    questionCount: { type: 'integer', description: 'All of them' },
  },
};

const noFields = refusal('A field is given; there is none here');
const wrong = refusal('A field is wrong');
const missing = refusal('There is no such record');
const against = refusal('Something else stands against it');
