import type { Context } from 'hono';
import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { readQuery } from './readQuery.ts';
import { recordNamed } from './recordNamed.ts';

/** Which part of the log a query asks for. A lifter or day that the club does not have is no empty part. */
export async function setsAskedFor(c: Context, store: ClubStore) {
  const asked = readQuery(c, {
    lifterId: z.string().optional(),
    dayId: z.string().optional(),
    from: localDate.optional(),
    to: localDate.optional(),
  });
  const { lifterId, dayId, from, to } = asked;
  if (from !== undefined && to !== undefined && from > to)
    throw new Refusal('invalid', 'from', `from is "${from}"; it must be no later than to, "${to}".`);
  if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
  if (dayId !== undefined) await recordNamed(store, 'day', 'dayId', dayId);
  return asked;
}
