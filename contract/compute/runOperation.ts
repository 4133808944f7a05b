import type { Tell } from '#contract/words/doing.ts';
import { type Clock, noClock } from '#core/day/timeSpent.ts';
import { InputError } from './InputError.ts';
import type { Operation } from './Operation.ts';
import { readInput } from './readInput.ts';

/**
 * One document in, one document out; throws an `InputError` where there is no answer in finite numbers. Without a clock a search
 * takes the time that it needs.
 */
export async function runOperation(
  operation: Operation,
  document: unknown,
  clock: Clock = noClock,
  tell: Tell = () => {},
): Promise<unknown> {
  const input = readInput(operation, document);
  const output = await answer(operation, input, clock, tell);
  if (allFinite(output)) return output;
  throw new InputError({ field: '', message: 'These values are too large or too small to calculate with.' });
}

/** The core throws a `RangeError` on values that it cannot calculate with. */
async function answer(operation: Operation, input: unknown, clock: Clock, tell: Tell): Promise<unknown> {
  try {
    return await operation.run(input, clock, tell);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new InputError({ field: '', message: `There is no answer for these values: ${error.message}.` });
  }
}

function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(allFinite);
}
