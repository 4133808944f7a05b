import type { Context } from 'hono';
import { Refusal } from '#store/Refusal.ts';

/** The body as text; refused when it is announced as anything but `type`, since a foreign form can send only other types. */
export async function readText(c: Context, type: string): Promise<string> {
  refuseOtherThan(c, type);
  return c.req.text();
}

export function refuseOtherThan(c: Context, type: string): void {
  const announced = (c.req.header('content-type') ?? '').split(';', 1)[0]?.trim().toLowerCase();
  if (announced !== type) throw new Refusal('invalid', 'Content-Type', `The body must be sent as ${type}.`);
}
