import type { Context } from 'hono';
import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { lift } from '#contract/records/lift.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { SetFilter } from '#store/logQuery.ts';
import { Refusal } from '#store/Refusal.ts';
import { readQuery } from './readQuery.ts';
import { recordNamed } from './recordNamed.ts';

/** How the log is narrowed; an address may take more. */
export const narrowing = z.object({
  lifterId: z.string().optional(),
  lift: lift.optional(),
  dayId: z.string().optional(),
  from: localDate.optional(),
  to: localDate.optional(),
  words: z.string().max(200, 'it must have 200 letters at most').optional(),
});

/** Which part of the log a query asks for, and all that was `asked`. A lifter or day that the club does not have is no empty part. */
export async function setsAskedFor<Asked extends typeof narrowing>(
  c: Context,
  store: ClubStore,
  shape: Asked,
): Promise<{ filter: SetFilter; asked: z.output<Asked> }> {
  const asked = readQuery(c, shape);
  const { lifterId, lift: only, dayId, from, to, words = '' } = asked;
  if (from !== undefined && to !== undefined && from > to)
    throw new Refusal('invalid', 'from', `from is "${from}"; it must be no later than to, "${to}".`);
  if (lifterId !== undefined) await recordNamed(store, 'lifter', 'lifterId', lifterId);
  if (dayId !== undefined) await recordNamed(store, 'day', 'dayId', dayId);
  const filter = { lifterId, lift: only, dayId, from, to, words: words.split(/\s+/).filter(Boolean) };
  return { filter, asked };
}
