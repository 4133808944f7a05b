import type { Context } from 'hono';
import type { Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The JSON object in the body; refused when it is announced as something else, which is all that a foreign form can send. */
export async function readJson(c: Context): Promise<Given> {
  if (!/^application\/json\b/i.test(c.req.header('content-type') ?? '')) {
    throw new Refusal('invalid', 'Content-Type', 'The body must be sent as application/json.');
  }
  let body: unknown;
  try {
    body = await c.req.json();
  } catch {
    throw new Refusal('invalid', '', 'The body is not valid JSON.');
  }
  if (typeof body !== 'object' || body === null || Array.isArray(body)) {
    throw new Refusal('invalid', '', 'The body must be one JSON object.');
  }
  return body as Given;
}
