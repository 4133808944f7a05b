import { InputError } from './InputError.ts';
import type { Operation } from './Operation.ts';
import { readInput } from './readInput.ts';

/** One document in, one document out; throws an `InputError` where there is no answer in finite numbers. */
export async function runOperation(operation: Operation, document: unknown): Promise<unknown> {
  const input = readInput(operation, document);
  const output = await operation.run(input);
  if (allFinite(output)) return output;
  throw new InputError({ field: '', message: 'These values are too large or too small to calculate with.' });
}

function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(allFinite);
}
