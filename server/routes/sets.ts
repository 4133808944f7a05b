import { Hono } from 'hono';
import { z } from 'zod';
import { spelt } from '#contract/words/spelt.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { setsAskedFor } from '#server/guard/setsAskedFor.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** The log of sets done: read it, add to it, correct a mistake, strike it and bring it back. */
export function setRoutes(store: ClubStore) {
  return new Hono()
    .get('/sets', async (c) => {
      const sets = await store.loggedSets(await setsAskedFor(c, store));
      return c.json({ sets, formerLabels: await formerLabels(store, sets) });
    })
    .post('/sets', noQuery, async (c) => c.json(await store.logSets(listOf(await readJson(c))), 201))
    .post('/sets/:id/strike', noQuery, async (c) => c.json(await store.strikeSet(c.req.param('id'))))
    .post('/sets/:id/restore', noQuery, async (c) => c.json(await store.restoreSet(c.req.param('id'))))
    .post('/sets/:id/correct', noQuery, async (c) => {
      const { sets, seq } = await store.correctSets([{ id: c.req.param('id'), set: await readJson(c) }]);
      return c.json({ set: sets[0], seq });
    })
    .post('/sets/correct', noQuery, async (c) =>
      c.json(await store.correctSets(asShaped(correctionsShape, await readJson(c)).corrections)),
    )
    .get('/sets/band-reps', noQuery, async (c) => c.json({ bandReps: await store.bandReps() }));
}

/** What gear was called that sets name and that the club no longer has, by its id. */
async function formerLabels(store: ClubStore, sets: Parameters<ClubStore['formerGear']>[0]) {
  const former = await store.formerGear(sets);
  return Object.fromEntries(former.map(({ record }) => [record.id, record.label]));
}

const correctionsShape = z.strictObject({
  corrections: z
    .array(z.strictObject({ id: z.string(), set: z.record(z.string(), z.unknown()).nullable() }))
    .min(1),
});

function listOf({ sets, ...rest }: Given): Given[] {
  const [other] = Object.keys(rest);
  if (other !== undefined)
    throw new Refusal(
      'invalid',
      other,
      `${other} is not a field that is known here; the body is {"sets": [...]}.`,
    );
  if (!Array.isArray(sets))
    throw new Refusal(
      'invalid',
      'sets',
      `sets is ${sets === undefined ? 'missing' : spelt(sets)}; it must be a list of sets.`,
    );
  return sets as Given[];
}
