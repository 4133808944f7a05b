import { z } from 'zod';

/** How the refusal of an unknown field goes on where it names the known ones. */
export const namesKnown = 'The known fields are ';

/** An object that takes these fields and no other; the refusal of another names the known ones. */
export function fields<Shape extends z.ZodRawShape>(shape: Shape) {
  const known = `${namesKnown}${Object.keys(shape).join(', ')}.`;
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? known : undefined),
  });
}

export const finite = z.number();
export const positive = z.number().positive();
export const notNegative = z.number().nonnegative();
/*
 * No gym has more than these; what lies beyond is a slip of the keys, a wrong unit or a sum that overflows. They leave room
 * for made-up extremes such as a top speed that never limits.
 */
export const mass = positive.max(10_000);
export const massOrNone = notNegative.max(10_000);
export const length = positive.max(100);
export const lengthOrNone = notNegative.max(100);
/** A coordinate, m. */
export const place = finite.min(-100).max(100);
export const force = positive.max(1_000_000);
export const forceEitherWay = finite.min(-1_000_000).max(1_000_000);
/** Seconds, or m/s. */
export const pace = positive.max(1e12);
export const paceOrNone = notNegative.max(1e12);
/** Exponents of the strength curve: e to the 10 is 22,026 times as strong. */
export const exponent = finite.min(-10).max(10);

/** How many alike. */
export const count = z.int().min(1).max(1000);
