import type { Context } from 'hono';
import { beyondBounds } from '#contract/json/beyondBounds.ts';
import type { Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { readText } from './readText.ts';

/** The JSON object in the body; one that is too deep or too long is refused before it is understood. */
export async function readJson(c: Context): Promise<Given> {
  const text = await readText(c, 'application/json');
  const beyond = beyondBounds(text);
  if (beyond !== null) throw new Refusal('invalid', '', `The body ${beyond}, more than is taken at once.`);
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
