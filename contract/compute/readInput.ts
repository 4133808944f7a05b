import type { z } from 'zod';
import { beyondBounds } from '#contract/json/beyondBounds.ts';
import { shapeProblem } from '#contract/words/shapeProblem.ts';
import { namesKnown } from './fields.ts';
import { InputError } from './InputError.ts';
import type { Operation } from './Operation.ts';

/** Reads JSON text; text that is none is refused with the place where it breaks, one too deep or too long before it is understood. */
export function parseJson(text: string): unknown {
  const beyond = beyondBounds(text, mostComputed, anyLevel);
  if (beyond !== null)
    throw new InputError({ field: '', message: `The input ${beyond}, more than is taken at once.` });
  try {
    return JSON.parse(text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const message =
      text.trim() === ''
        ? 'The input is empty; one JSON document is needed.'
        : `The input is not JSON: ${reason}.`;
    throw new InputError({ field: '', message });
  }
}

/** A log of many years is one document here. */
const mostComputed = 1_000_000;
/** The shapes look no deeper than they go themselves, and then name the field. */
const anyLevel = Number.POSITIVE_INFINITY;

/** Checks a document against the operation's shape; the first fault is thrown as an `InputError`. */
export function readInput<Input extends z.ZodType>(
  operation: Operation<Input>,
  document: unknown,
): z.output<Input> {
  const result = operation.inputSchema.safeParse(document);
  if (result.success) return result.data;
  const { field, message } = shapeProblem(result.error, document);
  const [issue] = result.error.issues;
  // The shape of a record says nothing of its own there.
  const known = issue?.message.startsWith(namesKnown) ? ` ${issue.message}` : '';
  throw new InputError({ field, message: message + known });
}
