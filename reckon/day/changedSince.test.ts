import { expect, test } from 'vitest';
import type { KindName, RecordOf } from '#contract/records/allKinds.ts';
import { changedSentences } from '#contract/words/changedSentences.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { changedSince } from './changedSince.ts';

const club = millraceClub('2026-11-25');
const day = club.day.find(({ id }) => id === 'day-speed-squat')!;
const idOf = (name: string) => club.lifter.find((lifter) => lifter.name.startsWith(name))!.id;
const called = {
  lifter: (id: string) => club.lifter.find((lifter) => lifter.id === id)!.name.split(' ')[0]!,
  pair: (id: string) => club.bandPair.find((pair) => pair.id === id)!.label,
};

function changed<K extends KindName>(kind: K, id: string, change: Partial<RecordOf<K>>) {
  const before = club[kind].find((record) => record.id === id)! as RecordOf<K>;
  return { kind, id, before, after: { ...before, ...change } };
}
const isNew = (kind: KindName, record: object) => ({
  kind,
  id: 'new',
  before: null,
  after: { id: 'new', ...record } as never,
});
const said = (...entries: Parameters<typeof changedSince>[0]) =>
  changedSentences(changedSince(entries, day), called, 'kg');

test('what the loads rest on is named as a coach would say it, and said once', () => {
  const [pair] = club.bandPair;
  const reading = { ...club.bandReading[0]!, bandPairId: pair!.id };
  expect(
    said(
      isNew('bodyMass', { lifterId: idOf('Emre'), takenOn: '2026-11-25', massKg: 82.4 }),
      { ...isNew('bandReading', reading), id: 'one' },
      { ...isNew('bandReading', reading), id: 'two' },
      changed('bandPair', pair!.id, { retiredOn: '2026-11-25' }),
    ),
  ).toEqual([
    `Band pair "${pair!.label}" is out of service.`,
    `${pair!.label} was measured again.`,
    'Emre weighs 82.4 kg.',
  ]);
});

test('what was changed back, what only the eye sees, other lifters and other days are not told', () => {
  const box = changed('box', club.box[0]!.id, { heightM: 0.5 });
  const back = { ...box, before: box.after, after: box.before };
  const someoneElse = club.lifter.find(
    ({ id }) => !day.groups.some(({ places }) => places.some(({ lifterId }) => lifterId === id)),
  )!;
  expect(said(box)).toEqual([`Box "${club.box[0]!.label}" was changed.`]);
  expect(said(box, back)).toEqual([]);
  expect(said(changed('lifter', idOf('Emre'), { labels: ['late crew'], note: 'Away on Friday.' }))).toEqual(
    [],
  );
  expect(said(changed('club', 'club', { massUnit: 'lb', name: 'Other' }))).toEqual([]);
  expect(said(isNew('bodyMass', { lifterId: someoneElse.id, takenOn: '2026-11-25', massKg: 60 }))).toEqual(
    [],
  );
  const other = club.day.find(({ id }) => id !== day.id)!;
  expect(said(changed('day', other.id, { oneSetPull: 0.9 }))).toEqual([]);
  expect(said(changed('day', day.id, { note: 'Only a note.' }))).toEqual([]);
  expect(said(changed('day', day.id, { oneSetPull: 0.9 }))).toEqual(['The plan of this day was changed.']);
});
