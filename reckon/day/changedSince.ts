import type { ChangedRecord } from '#contract/day/changedRecord.ts';
import { allKinds, type KindName, kindNames, type RecordOf } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { recordName } from '#contract/records/recordName.ts';
import { fedOf, isOfLifter, lifterOf } from '#reckon/basis/basisRecords.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import { ofDay } from './planBasis.ts';

/** What one change did to a record: null before is a new one, null after a removed one. */
interface Entry {
  kind: KindName;
  id: string;
  before: RecordOf<KindName> | null;
  after: RecordOf<KindName> | null;
}

/**
 * The records that a day's loads rest on and that entries, oldest first, left different: gear, the day itself, what is known of its
 * lifters. What was changed and changed back, and what only the eye sees, is not told. In the order in which kinds stand.
 */
export function changedSince(entries: readonly Entry[], day: Day): ChangedRecord[] {
  const lifterIds = new Set(day.groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)));
  const net = new Map<string, Entry>();
  for (const entry of entries) {
    const key = `${entry.kind} ${entry.id}`;
    net.set(key, { ...entry, before: (net.get(key) ?? entry).before });
  }
  const touches = ({ kind, before, after }: Entry) => {
    const record = after ?? before;
    if (record === null) return false;
    if (kind === 'day') return record.id === day.id;
    if (allKinds[kind].facts.feeds.plan === undefined) return false;
    return !isOfLifter(kind) || lifterIds.has(lifterOf(record));
  };
  return [...net.values()]
    .filter((entry) => touches(entry) && markOf(entry.kind, entry.before) !== markOf(entry.kind, entry.after))
    .sort((a, b) => kindNames.indexOf(a.kind) - kindNames.indexOf(b.kind))
    .map(told);
}

function markOf(kind: KindName, record: RecordOf<KindName> | null): string {
  if (record === null) return '';
  return fingerprint(kind === 'day' ? ofDay(record as Day) : fedOf(kind, record, 'plan'));
}

function told({ kind, id, before, after }: Entry): ChangedRecord {
  const record = (after ?? before)!;
  return {
    kind,
    id,
    what: before === null ? 'new' : after === null ? 'removed' : 'changed',
    called: recordName(kind, record),
    lifterId: isOfLifter(kind) ? lifterOf(record) : null,
    bandPairId: kind === 'bandPair' ? id : 'bandPairId' in record ? record.bandPairId : null,
    massKg: after !== null && kind === 'bodyMass' ? (after as RecordOf<'bodyMass'>).massKg : null,
    outOfService:
      (after === null && (kind === 'bandPair' || kind === 'chainPair')) ||
      (after !== null && 'retiredOn' in after && after.retiredOn !== null),
  };
}
