import type { Context } from 'hono';
import { createMiddleware } from 'hono/factory';
import { z } from 'zod';
import { shapeProblem } from '#contract/words/shapeProblem.ts';
import { Refusal } from '#store/Refusal.ts';

/**
 * What the query of an address asks for, read by its fields; a field that is wrong, unknown or there twice is refused. `asked` is made once
 * for each address: a shape costs more to make than to read by.
 */
export function readQuery<Asked extends z.ZodObject>(c: Context, asked: Asked): z.output<Asked> {
  for (const [name, values] of Object.entries(c.req.queries())) {
    if (!Object.hasOwn(asked.shape, name))
      throw refused(name, `${name} is not a field here; ${taken(asked.shape)}.`);
    if (values.length > 1)
      throw refused(name, `${name} stands ${values.length} times; it must stand once at most.`);
  }
  const given = c.req.query();
  const read = asked.safeParse(given);
  if (read.success) return read.data;
  const { field, message } = shapeProblem(read.error, given);
  throw refused(field, message);
}

/** For an address that takes no query: a wish such as `?dryRun=1` is not passed over where it would not be heard. */
export const noQuery = createMiddleware(async (c, next) => {
  readQuery(c, nothing);
  await next();
});

const nothing = z.object({});

/** A number as a query spells it; `allowed` says in words what `fits`. */
export function numberInQuery(allowed: string, fits: (value: number) => boolean) {
  return z.string().transform((text, context) => {
    const value = decimal.test(text) ? Number(text) : Number.NaN;
    if (fits(value)) return value;
    context.addIssue({ code: 'custom', message: `it must be ${allowed}`, input: text });
    return z.NEVER;
  });
}

/** A wish that is either spoken out or not: `?dryRun=1`. */
export const wishInQuery = z
  .literal('1')
  .optional()
  .transform((given) => given === '1');

/** An empty text is no number, though `Number` takes it for 0. */
const decimal = /^[+-]?(\d+\.?\d*|\.\d+)$/;

function taken(fields: object): string {
  const names = Object.keys(fields);
  return names.length === 0 ? 'this address takes none' : `this address takes ${names.join(', ')}`;
}

function refused(field: string, message: string): Refusal {
  return new Refusal('invalid', field, message);
}
