import type { ClubStore } from '#store/ClubStore.ts';
import { localToday } from './localToday.ts';

/** Fills an empty club with the invented one as it is today, its next day worked out. */
export async function fillWithDemo(store: ClubStore): Promise<void> {
  const { millraceClub } = await import('#demo/millraceClub.ts');
  const { millraceLog } = await import('#demo/history/millraceLog.ts');
  const { millraceTaken } = await import('#demo/millraceTaken.ts');
  const today = localToday();
  const records = millraceClub(today);
  const sets = millraceLog(records, today);
  await store.importRecords(records, { sets, takenPlans: millraceTaken(records, today) });
  // Tomorrow's day greets with its loads, by everybody's bests: logs are read once the server runs, and then offered.
  const [next] = records.day.filter(({ date }) => date > today).sort((a, b) => a.date.localeCompare(b.date));
  if (next === undefined) return;
  const { solveDay } = await import('#reckon/day/solveDay.ts');
  const awaited = next.groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId));
  const plan = solveDay(records, next, [], { awaited, clock: Date.now });
  await store.addPrescription(next.id, new Date().toISOString(), plan);
}
