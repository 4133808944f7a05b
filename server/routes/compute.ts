import { Hono } from 'hono';
import { InputError } from '#contract/compute/InputError.ts';
import { parseJson } from '#contract/compute/readInput.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import { findOperation, operationNames, operations } from '#reckon/operations.ts';
import { errorBody } from '#server/guard/errors.ts';
import { noQuery } from '#server/guard/readQuery.ts';

/** The calculations over HTTP: the same documents as `rackwright compute` takes and gives. */
export const computeRoutes = new Hono()
  .get('/', noQuery, (context) =>
    context.json({ operations: operations.map(({ name, summary }) => ({ name, summary })) }),
  )
  .post('/:operation', noQuery, async (context) => {
    const name = context.req.param('operation');
    const operation = findOperation(name);
    if (!operation) {
      const message = `${name} is not a calculation; the known ones are ${operationNames.join(', ')}.`;
      return context.json(errorBody('operation', message), 404);
    }
    try {
      const output = await runOperation(operation, parseJson(await context.req.text()), Date.now);
      return context.body(JSON.stringify(output), 200, { 'content-type': 'application/json' });
    } catch (error) {
      if (error instanceof InputError) return context.json(errorBody(error.field, error.message), 400);
      throw error;
    }
  });
