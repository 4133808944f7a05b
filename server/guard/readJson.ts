import type { Context } from 'hono';
import type { Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { readText } from './readText.ts';

/** The JSON object in the body. */
export async function readJson(c: Context): Promise<Given> {
  const text = await readText(c, 'application/json');
  let body: unknown;
  try {
    body = JSON.parse(text);
  } catch {
    throw new Refusal('invalid', '', 'The body is not valid JSON.');
  }
  if (typeof body !== 'object' || body === null || Array.isArray(body)) {
    throw new Refusal('invalid', '', 'The body must be one JSON object.');
  }
  return body as Given;
}
