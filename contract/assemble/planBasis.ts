import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';

/** Gear of the club, and what it knows of a lifter: all that loads are worked out from, beside the day itself. */
const gearKinds = [
  'club',
  'bar',
  'collarPair',
  'disc',
  'bandPair',
  'bandReading',
  'chainPair',
  'box',
  'rack',
  'anchor',
  'hookup',
  'scaleReading',
] as const satisfies KindName[];
const lifterKinds = ['bodyMass', 'liftHeights', 'best'] as const satisfies KindName[];

/**
 * A short mark of everything that a day's loads rest on: the same as long as nothing of it has changed. A plan carries the
 * mark of its making, so that a sheet on the wall can be told from what would be worked out today. Titles and notes do
 * not count.
 */
export function planBasis(records: ClubRecords, { date, oneSetPull, groups }: Day): string {
  const lifterIds = new Set(groups.flatMap(({ places }) => places.map(({ lifterId }) => lifterId)));
  return fingerprint([
    date,
    oneSetPull,
    groups.map((group) => ({ ...group, title: '' })),
    gearKinds.map((kind) => inOrder(records[kind])),
    inOrder(records.lifter.filter(({ id }) => lifterIds.has(id))),
    lifterKinds.map((kind) => inOrder(records[kind].filter(({ lifterId }) => lifterIds.has(lifterId)))),
  ]);
}

function inOrder(records: readonly { id: string }[]): object[] {
  return records.toSorted((a, b) => (a.id < b.id ? -1 : 1)).map((record) => ({ ...record, note: '' }));
}

/** Two 32-bit FNV-1a hashes of the JSON with its keys in order, one of them read backwards, in hexadecimal. */
function fingerprint(value: unknown): string {
  const text = JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
  let forwards = 0x811c9dc5;
  let backwards = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [forwards, backwards].map((hash) => (hash >>> 0).toString(16).padStart(8, '0')).join('');
}
