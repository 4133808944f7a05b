import type { Context } from 'hono';
import { localDate } from '#contract/records/kind.ts';
import { Refusal } from '#store/Refusal.ts';

/** A calendar date that the query of an address may hold. */
export function dateIn(c: Context, name: string): string | undefined {
  const date = c.req.query(name);
  if (date === undefined || localDate.safeParse(date).success) return date;
  throw new Refusal('invalid', name, `${name} is "${date}"; it must be a calendar date such as 2026-11-25.`);
}
