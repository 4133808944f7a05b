import type { ErrorHandler } from 'hono';
import { HTTPException } from 'hono/http-exception';
import type { RecordClash } from '#contract/changes/RecordClash.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { AskerLeft } from '#server/jobs/waiting.ts';
import { ClashRefusal, Refusal, type RefusalReason } from '#store/Refusal.ts';

/** The body of every answer that is not a success. */
export interface ErrorBody {
  error: { field: string; message: string };
  /** Of a change that somebody else's came before. */
  clash?: RecordClash;
}

/**
 * Turns a refusal into 400, 404, 409 or 503 with its one sentence, and what a calculation misses in the club's records into 409;
 * anything else is a fault of the program and is logged.
 */
export const answerError: ErrorHandler = (error, c) => {
  if (error instanceof Refusal) {
    const clash = error instanceof ClashRefusal && { clash: error.clash };
    return c.json({ ...errorBody(error.field, error.message), ...clash }, statusOf[error.reason]);
  }
  if (error instanceof CannotAssemble) return c.json(errorBody('', error.message), 409);
  if (error instanceof HTTPException) return c.json(errorBody('', error.message), error.status);
  // Nobody reads it.
  if (error instanceof AskerLeft) return new Response(null, { status: 499 });
  console.error(error);
  return c.json(errorBody('', 'Something in the program failed; nothing was changed.'), 500);
};

/** The sentence is one line and can be read to its end, whatever names and values stand in it. */
export function errorBody(field: string, message: string): ErrorBody {
  return { error: { field: onOneLine(field), message: onOneLine(message) } };
}

function onOneLine(text: string): string {
  const line = text.length > mostLetters ? `${text.slice(0, mostLetters - 4)}....` : text;
  return line.replaceAll(/\p{Cc}+/gu, ' ');
}

const mostLetters = 1000;

const statusOf = { invalid: 400, missing: 404, conflict: 409, unavailable: 503 } as const satisfies Record<
  RefusalReason,
  number
>;
