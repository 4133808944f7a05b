import { InputError } from './InputError.ts';
import type { Operation } from './Operation.ts';
import { readInput } from './readInput.ts';

/** One document in, one document out; throws an `InputError` where there is no answer in finite numbers. */
export async function runOperation(operation: Operation, document: unknown): Promise<unknown> {
  const input = readInput(operation, document);
  const output = await answer(operation, input);
  if (allFinite(output)) return output;
  throw new InputError({ field: '', message: 'These values are too large or too small to calculate with.' });
}

/** The core throws a `RangeError` on values that it cannot calculate with. */
async function answer(operation: Operation, input: unknown): Promise<unknown> {
  try {
    return await operation.run(input);
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
