import type { z } from 'zod';
import { shapeProblem } from '#contract/words/shapeProblem.ts';
import { Refusal } from './Refusal.ts';

/** What was given as its shape reads it, defaults filled in; refused with the first field that is wrong. */
export function asShaped<Shape extends z.ZodType>(shape: Shape, given: unknown): z.output<Shape> {
  const read = shape.safeParse(given);
  if (read.success) return read.data;
  const { field, message } = shapeProblem(read.error, given);
  throw new Refusal('invalid', field, message);
}
