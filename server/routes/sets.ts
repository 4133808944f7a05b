import { Hono } from 'hono';
import { z } from 'zod';
import { localDate } from '#contract/records/kind.ts';
import { spelt } from '#contract/words/spelt.ts';
import { markedJson } from '#server/guard/markedJson.ts';
import { readJson } from '#server/guard/readJson.ts';
import { noQuery, numberInQuery } from '#server/guard/readQuery.ts';
import { narrowing, setsAskedFor } from '#server/guard/setsAskedFor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { newestBandReps } from '#server/wear/newestBandReps.ts';
import { asShaped } from '#store/asShaped.ts';
import type { ClubStore, Given } from '#store/ClubStore.ts';
import type { PageEnd } from '#store/logPages.ts';
import { Refusal } from '#store/Refusal.ts';

/** The log of sets done: read it, add to it, correct a mistake, strike it and bring it back. */
export function setRoutes(store: ClubStore, run: RunWork) {
  const bandReps = newestBandReps(store, run);
  return new Hono()
    .get('/sets', async (c) => {
      const { filter, asked } = await setsAskedFor(c, store, pageAsked);
      const { sets, end } = await store.setsPage(filter, asked);
      return markedJson(c, {
        sets,
        formerLabels: await formerLabels(store, sets),
        next: end && spelledEnd(end),
      });
    })
    .get('/sets/days', async (c) => {
      const { filter, asked } = await setsAskedFor(c, store, daysAsked);
      const { most, before = null } = asked;
      return markedJson(c, await store.logDays(filter, { most, before }));
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
    .get('/sets/band-reps', noQuery, async (c) => markedJson(c, { bandReps: await bandReps() }));
}

const mostSets = 1000;
const pageLength = pageOf(mostSets).default(mostSets);
/** Two weeks of most clubs; of four hundred lifters ten thousand sets to be summed up. */
const daysLength = pageOf(60).default(7);

function pageOf(longest: number) {
  return numberInQuery(
    `a whole number from 1 to ${longest}`,
    (most) => Number.isInteger(most) && most >= 1 && most <= longest,
  );
}

const spelling = z.tuple([localDate, z.string(), z.int(), z.string()]);

/** Where a page ended, as its answer names it for who asks on. */
function spelledEnd({ doneOn, lifterId, order, id }: PageEnd): string {
  return JSON.stringify([doneOn, lifterId, order, id] satisfies z.infer<typeof spelling>);
}

const pageEnd = z
  .string()
  .optional()
  .transform((text, context): PageEnd | null => {
    if (text === undefined) return null;
    const read = spelling.safeParse(fromJson(text));
    if (read.success) {
      const [doneOn, lifterId, order, id] = read.data;
      return { doneOn, lifterId, order, id };
    }
    context.addIssue({
      code: 'custom',
      message: 'it must be as the page before named it in next',
      input: text,
    });
    return z.NEVER;
  });

const pageAsked = narrowing.extend({ most: pageLength, after: pageEnd });
const daysAsked = narrowing.extend({ most: daysLength, before: localDate.optional() });

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
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
