import { createHash } from 'node:crypto';
import type { Context } from 'hono';

/**
 * Answers a GET in JSON, with the mark by which a reader asks next time (see unchanged.ts); to one who has it already the mark alone. It is
 * marked while it is a text: to mark an answer that is made its body would be read as a stream and built once more.
 */
export function markedJson(c: Context, value: unknown): Response {
  const text = JSON.stringify(value);
  const mark = `"${createHash('sha1').update(text).digest('base64url')}"`;
  c.header('ETag', mark);
  return marksIn(c.req.header('if-none-match')).includes(mark)
    ? c.body(null, 304)
    : c.body(text, 200, { 'Content-Type': 'application/json' });
}

/** Those that a reader names (RFC 9110, 13.1.2); whoever stands between may have made them weak. */
function marksIn(named = ''): string[] {
  return named.match(/"[^"]*"/g) ?? [];
}
