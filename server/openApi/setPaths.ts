import { z } from 'zod';
import { logColumnNames } from '#contract/log/logColumns.ts';
import { logDays } from '#contract/log/logDay.ts';
import { slipTakings } from '#contract/log/slipAsked.ts';
import { lift } from '#contract/records/lift.ts';
import { givenSet, loggedSet } from '#contract/records/loggedSet.ts';
import { unitSlipKinds } from '#core/strength/unitSlips.ts';
import { answer, body, inPath, object, refusal, seqSchema } from './answers.ts';

/** The routes of the log. */
export function setPaths() {
  const set = z.toJSONSchema(loggedSet, { io: 'output' });
  const sets = { type: 'array', items: set };
  const given = { type: 'array', items: z.toJSONSchema(givenSet, { io: 'input' }), minItems: 1 };
  const correction = object({
    id: text,
    set: { anyOf: [z.toJSONSchema(givenSet, { io: 'input' }), { type: 'null' }] },
  });
  return {
    '/api/sets': {
      get: {
        operationId: 'set.list',
        summary:
          'A page of the sets done, struck ones included: the newest day first, in it lifter by lifter; what is logged meanwhile moves no later page',
        tags,
        parameters: [
          ...narrowed,
          narrowing('most', 'So many at most', { type: 'integer', minimum: 1, maximum: 1000, default: 1000 }),
          narrowing('after', 'Where the page before ended, as it said in next'),
        ],
        responses: {
          200: answer(
            'The sets of the page by day and order, how gear was called that is no longer there, and where the next page begins',
            object({ sets, formerLabels, next: { type: ['string', 'null'] } }),
          ),
          ...noPart,
        },
      },
      post: {
        operationId: 'set.log',
        summary:
          'Add sets to the log, all of them or none; one that is sent again with its id is the same set',
        tags,
        requestBody: body(object({ sets: given })),
        responses: {
          201: answer('The sets as kept', object({ sets, seq: seqSchema })),
          400: refusal('A field is wrong'),
          409: refusal('The log has another set with that id'),
        },
      },
    },
    '/api/sets/days': {
      get: {
        operationId: 'set.days',
        summary: 'Days on which such sets were done, the newest first, each summed up',
        tags,
        parameters: [
          ...narrowed,
          narrowing('most', 'So many at most', { type: 'integer', minimum: 1, maximum: 60, default: 7 }),
          narrowing('before', 'Older ones than this date', date),
        ],
        responses: {
          200: answer(
            'The days, and whether there are older ones',
            z.toJSONSchema(logDays, { io: 'output' }),
          ),
          ...noPart,
        },
      },
    },
    '/api/sets/{id}/strike': marking(
      'set.strike',
      'Mark a set as a mistake; it stays readable',
      'It is struck already',
    ),
    '/api/sets/{id}/restore': marking('set.restore', 'Let a struck set count again', 'It is not struck'),
    '/api/sets/{id}/correct': {
      parameters: [inPath('id', 'string')],
      post: {
        operationId: 'set.correct',
        summary: 'Put a set in the place of a mistaken one, which is struck, as one change',
        tags,
        requestBody: body(z.toJSONSchema(givenSet, { io: 'input' })),
        responses: {
          200: answer('The corrected set as kept', object({ set, seq: seqSchema })),
          400: refusal('A field is wrong; nothing was changed'),
          404: refusal('There is no such set'),
          409: refusal('It is struck already'),
        },
      },
    },
    '/api/sets/correct': {
      post: {
        operationId: 'set.correctMany',
        summary: 'Strike mistaken sets and put corrected ones in their place, all as one change or none',
        tags,
        requestBody: body(object({ corrections: { type: 'array', items: correction, minItems: 1 } })),
        responses: {
          200: answer('The corrected sets as kept', object({ sets, seq: seqSchema })),
          400: refusal('A field is wrong; nothing was changed'),
          404: refusal('There is no such set'),
          409: refusal('One is struck already; nothing was changed'),
        },
      },
    },
    '/api/sets/csv': {
      get: {
        operationId: 'set.writeCsv',
        summary: 'Every set that counts as CSV, one a line, the units in the header',
        tags,
        parameters: narrowed,
        responses: { 200: answer('The file', text, 'text/csv'), ...noPart },
      },
    },
    '/api/sets/import': {
      post: {
        operationId: 'set.readCsv',
        summary: 'Take a CSV file in, whole or not at all; sets that the log has are passed over',
        tags,
        requestBody: body(importAsked),
        responses: {
          200: answer('What was taken, or would be', object(importAnswer)),
          400: refusal('Lines or fields that are wrong; nothing was taken'),
        },
      },
    },
    '/api/sets/band-reps': {
      get: {
        operationId: 'set.bandReps',
        summary: 'How often each band pair was stretched on each day, by the log',
        tags,
        responses: {
          200: answer('Reps by pair and day', object({ bandReps: { type: 'array', items: bandReps } })),
        },
      },
    },
  };
}

const tags = ['log'];
const text = { type: 'string' };
const date = { type: 'string', format: 'date' };
const formerLabels = {
  type: 'object',
  additionalProperties: text,
  description: 'Label by id of removed gear',
};
const bandReps = object({
  bandPairId: text,
  doneOn: date,
  reps: { type: 'integer' },
});

const narrowed = [
  narrowing('lifterId', 'Only of this lifter'),
  narrowing('lift', 'Only this lift', { enum: lift.options }),
  narrowing('dayId', 'Only those entered from this training day'),
  narrowing('from', 'From this date on', date),
  narrowing('to', 'Up to this date', date),
  narrowing('words', 'All of these stand in the note of the set, or in that of its training day'),
];
const noPart = {
  400: refusal('A date is none, from is after to, or a field is unknown'),
  404: refusal('There is no such lifter or training day'),
};

const whole = { type: 'integer' };
const dateOrNull = { type: ['string', 'null'], format: 'date' };
const textByColumn = { type: 'object', propertyNames: { enum: logColumnNames }, additionalProperties: text };

const importAsked = {
  type: 'object',
  required: ['text'],
  properties: {
    text,
    columns: {
      ...textByColumn,
      type: ['object', 'null'],
      description: 'The header of the file for each column; null: the headers that look like it',
    },
    slips: {
      type: 'object',
      additionalProperties: { enum: slipTakings },
      description:
        'By the key of a slip that was found, how its sets are taken; as written where none is said',
    },
    dryRun: { type: 'boolean', description: 'Check only; change nothing', default: false },
  },
  additionalProperties: false,
};

const importAnswer = {
  rows: whole,
  added: whole,
  alreadyThere: whole,
  problems: { type: 'array', items: object({ line: whole, column: text, message: text }) },
  problemCount: { ...whole, description: 'All of them; the first 50 are told' },
  headers: { type: 'array', items: text },
  suggested: textByColumn,
  notTaken: {
    type: 'array',
    items: text,
    description: 'Headers that stand for no column: what is under them is left behind',
  },
  units: textByColumn,
  readAs: {
    type: 'array',
    items: text,
    description: 'Sentences about cells that could have been read otherwise, and how they were',
  },
  slips: {
    type: 'array',
    items: object({
      key: text,
      lifter: text,
      lift: { enum: lift.options },
      looksLike: { enum: unitSlipKinds },
      setCount: whole,
      firstOn: date,
      lastOn: date,
      bars: {
        type: 'array',
        items: object({ writtenKg: { type: 'number' }, meantKg: { type: 'number' }, sets: whole }),
      },
    }),
    description: 'New sets that look like pounds, or a nought too many, written down as kilograms',
  },
  firstOn: dateOrNull,
  lastOn: dateOrNull,
  lifters: { type: 'array', items: text, description: 'Names' },
  dryRun: { type: 'boolean' },
  seq: seqSchema,
};

function marking(operationId: string, summary: string, against: string) {
  return {
    parameters: [inPath('id', 'string')],
    post: {
      operationId,
      summary,
      tags,
      responses: {
        200: answer('The change, for undo', object({ seq: seqSchema })),
        404: refusal('There is no such set'),
        409: refusal(against),
      },
    },
  };
}

function narrowing(name: string, description: string, schema: object = text) {
  return { name, in: 'query', schema, description };
}
