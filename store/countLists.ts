import type { Kysely } from 'kysely';
import type { CountedLists } from '#contract/archive/archiveLook.ts';
import { logQuery } from './logQuery.ts';
import { prescriptionsThere } from './prescriptions.ts';
import type { Tables } from './schema.ts';
import { takenPlansThere } from './takenPlans.ts';

/** What an archive of the club would hold in its long lists, counted without reading them. To be called within one reading. */
export async function countLists(db: Kysely<Tables>, clubId: string): Promise<CountedLists> {
  const plans = prescriptionsThere(db, clubId).select(({ fn }) => [
    fn.countAll().as('count'),
    fn.max('prescription.solvedAt').as('newestAt'),
  ]);
  const taken = takenPlansThere(db, clubId).select(({ fn }) => [
    fn.countAll().as('count'),
    fn.max('takenPlan.takenAt').as('newestAt'),
  ]);
  const sets = logQuery(db, clubId, {}).select(({ fn }) => [
    fn.countAll().as('count'),
    fn.max('loggedSet.loggedAt').as('newestAt'),
  ]);
  return {
    prescriptions: counted(await plans.executeTakeFirstOrThrow()),
    takenPlans: counted(await taken.executeTakeFirstOrThrow()),
    sets: counted(await sets.executeTakeFirstOrThrow()),
  };
}

/** Of nothing the newest is null, which the query builder does not know. */
function counted({ count, newestAt }: { count: unknown; newestAt: string | null }) {
  return { count: Number(count), newestAt };
}
