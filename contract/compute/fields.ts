import { z } from 'zod';

/** An object that takes these fields and no other; the refusal of another names the known ones. */
export function fields<Shape extends z.ZodRawShape>(shape: Shape) {
  const known = `The known fields are ${Object.keys(shape).join(', ')}.`;
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? known : undefined),
  });
}

export const finite = z.number();
export const positive = z.number().positive();
export const notNegative = z.number().nonnegative();
/** How many alike. */
export const count = z.int().min(1).max(1000);
