import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import type { CapabilityRecords } from '#reckon/lifter/assembleCapability.ts';
import { bestKey, evidenceReader, type Riggings } from './evidenceReader.ts';
import { setFromBest } from './setFromBest.ts';

/** What the log and the bests of a lifter say of one lift, ready for the estimate. */
export interface LoggedEvidence {
  sets: SetEvidence[];
  /** Which record each of them is: a logged set's id, or a best's. */
  ids: string[];
  /** Records that could not be worked out, each with the reason in a sentence. */
  leftOut: { id: string; reason: string }[];
  /** When the last of them was done, and its place in that day; null: there is none. */
  last: Pick<LoggedSet, 'doneOn' | 'order'> | null;
}

/** Everything up to the day `on`; struck sets do not count. A best that no logged set tells stands for a set with nothing left, and so does a logged single that is a best. */
export function evidenceOf(
  records: CapabilityRecords,
  log: readonly LoggedSet[],
  lifterId: string,
  lift: Lift,
  on: string,
  riggings: Riggings = new Map(),
): LoggedEvidence {
  const logged = log.filter(
    (set) => set.lifterId === lifterId && set.lift === lift && set.struckAt === null && set.doneOn <= on,
  );
  const written = records.best.filter(
    (best) => best.lifterId === lifterId && best.lift === lift && best.doneOn <= on,
  );
  const days = new Set(written.map(({ doneOn }) => doneOn));
  const known = new Set(logged.filter(({ made, doneOn }) => made > 0 && days.has(doneOn)).map(bestKey));
  const bests = written.filter((best) => !known.has(bestKey(best))).map(setFromBest);
  const reader = evidenceReader(records, lifterId, lift, riggings);
  const inOrder = [...logged, ...bests].sort((a, b) => a.doneOn.localeCompare(b.doneOn) || a.order - b.order);
  const result: LoggedEvidence = { sets: [], ids: [], leftOut: [], last: inOrder.at(-1) ?? null };
  for (const set of inOrder) {
    const read = reader.read(set);
    if (typeof read === 'string') {
      result.leftOut.push({ id: set.id, reason: read });
      continue;
    }
    result.ids.push(set.id);
    result.sets.push(read);
  }
  return result;
}
