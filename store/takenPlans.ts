import type { Kysely } from 'kysely';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import type { TakenHead } from '#contract/season/seasonOffer.ts';
import { newId } from './newId.ts';
import { parseKept } from './parseKept.ts';
import type { Tables, TakenPlanRow } from './schema.ts';

export async function appendTakenPlan(
  db: Kysely<Tables>,
  clubId: string,
  taken: Pick<TakenPlan, 'seasonId' | 'takenAt' | 'takenBy' | 'document'>,
): Promise<TakenPlan> {
  const last = (await takenHeads(db, clubId, taken.seasonId)).at(-1);
  const added = { ...taken, id: newId(), number: (last?.number ?? 0) + 1 };
  await putTakenPlan(db, clubId, added);
  return added;
}

/** The plans of a season that were taken, oldest first. */
export async function takenHeads(db: Kysely<Tables>, clubId: string, seasonId: string): Promise<TakenHead[]> {
  return db
    .selectFrom('takenPlan')
    .select(['id', 'seasonId', 'number', 'takenAt', 'takenBy'])
    .where('clubId', '=', clubId)
    .where('seasonId', '=', seasonId)
    .orderBy('number')
    .execute();
}

/** One of them by its number; null where the season has none of that number. */
export async function takenPlanOf(
  db: Kysely<Tables>,
  clubId: string,
  seasonId: string,
  number: number,
): Promise<TakenPlan | null> {
  const row = await db
    .selectFrom('takenPlan')
    .selectAll()
    .where('clubId', '=', clubId)
    .where('seasonId', '=', seasonId)
    .where('number', '=', number)
    .executeTakeFirst();
  return row ? toTakenPlan(row) : null;
}

/** Those of the seasons that the club has, for who says what is asked of them. */
export function takenPlansThere(db: Kysely<Tables>, clubId: string) {
  return db
    .selectFrom('takenPlan')
    .innerJoin('season', (join) =>
      join.onRef('season.clubId', '=', 'takenPlan.clubId').onRef('season.id', '=', 'takenPlan.seasonId'),
    )
    .where('takenPlan.clubId', '=', clubId)
    .where('season.removedSeq', 'is', null);
}

/** Every one of the seasons that the club has, oldest of each season first. */
export async function* allTakenPlans(db: Kysely<Tables>, clubId: string): AsyncGenerator<TakenPlan, void> {
  const heads = await takenPlansThere(db, clubId)
    .select(['takenPlan.seasonId', 'takenPlan.number'])
    .orderBy('takenPlan.seasonId')
    .orderBy('takenPlan.number')
    .execute();
  for (const { seasonId, number } of heads) {
    const one = await takenPlanOf(db, clubId, seasonId, number);
    if (one) yield one;
  }
}

export async function putTakenPlan(db: Kysely<Tables>, clubId: string, taken: TakenPlan): Promise<void> {
  const row: TakenPlanRow = { ...taken, clubId, document: JSON.stringify(taken.document) };
  await db.insertInto('takenPlan').values(row).execute();
}

function toTakenPlan({ clubId: _club, document, ...row }: TakenPlanRow): TakenPlan {
  return { ...row, document: parseKept(document) };
}
