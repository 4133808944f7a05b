import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';

/** Gear of the club, and what it knows of a lifter: all that loads are worked out from. */
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

/** The club's gear, in an order of its own; notes do not count. */
export function gearBasis(records: Pick<ClubRecords, (typeof gearKinds)[number]>): object[] {
  return gearKinds.map((kind) => inOrder(records[kind]));
}

/** What the club knows of some lifters, likewise. */
export function lifterBasis(
  records: Pick<ClubRecords, 'lifter' | (typeof lifterKinds)[number]>,
  lifterIds: ReadonlySet<string>,
): object[] {
  return [
    inOrder(records.lifter.filter(({ id }) => lifterIds.has(id))),
    lifterKinds.map((kind) => inOrder(records[kind].filter(({ lifterId }) => lifterIds.has(lifterId)))),
  ];
}

function inOrder(records: readonly { id: string }[]): object[] {
  return records.toSorted((a, b) => (a.id < b.id ? -1 : 1)).map((record) => ({ ...record, note: '' }));
}
