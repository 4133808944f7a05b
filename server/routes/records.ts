import { Hono } from 'hono';
import { z } from 'zod';
import { spelt } from '#contract/words/spelt.ts';
import { kindOf } from '#server/guard/kindOf.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** Records of every kind: list, add, change, replace, remove, and take a change back. */
export function recordRoutes(store: ClubStore) {
  return new Hono()
    .get('/records/:kind', noQuery, async (c) =>
      markedJson(c, { records: await store.list(kindOf(c.req.param('kind'))) }),
    )
    .post('/records/:kind', noQuery, async (c) => {
      const kind = kindOf(c.req.param('kind'));
      return c.json(await store.create(kind, withoutId(await readJson(c), null)), 201);
    })
    .put('/records/:kind/:id', noQuery, async (c) => {
      const kind = kindOf(c.req.param('kind'));
      const id = c.req.param('id');
      return c.json(await store.update(kind, id, withoutId(await readJson(c), id)));
    })
    .patch('/records/:kind/:id', noQuery, async (c) => {
      const kind = kindOf(c.req.param('kind'));
      const how = asShaped(foundAndWanted, await readJson(c));
      return c.json(await store.change(kind, c.req.param('id'), how));
    })
    .delete('/records/:kind/:id', noQuery, async (c) =>
      c.json(await store.remove(kindOf(c.req.param('kind')), c.req.param('id'))),
    )
    .post('/undo/:seq{[0-9]+}', noQuery, async (c) => {
      const { seq } = await store.undo(Number(c.req.param('seq')));
      return c.json({ seq });
    });
}

const fields = z.record(z.string(), z.unknown());
const foundAndWanted = z.strictObject({ found: fields, wanted: fields });

/** The fields without the id, which the path names or the store makes. */
function withoutId(given: Given, expected: string | null): Given {
  if (!('id' in given)) return given;
  const { id, ...fields } = given;
  if (id === expected) return fields;
  const allowed =
    expected === null
      ? 'a new record gets its id here; leave it out'
      : `it must be "${expected}" as in the path`;
  throw new Refusal('invalid', 'id', `id is ${spelt(id)}; ${allowed}.`);
}
