import { describe, expect, test } from 'vitest';
import { readCsv } from '#contract/csv/readCsv.ts';
import { writeCsv } from '#contract/csv/writeCsv.ts';
import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { type FormLabels, formFaults } from './formFaults.ts';

const today = '2026-11-25';
const club = smallClub();
/** A form in inches; one inch is 2.54 cm by definition. */
const writes = {
  lengthText: (metres: number) => `${Number((metres / 0.0254).toFixed(2))} in`,
  dateText: (date: string) => `the day ${date}`,
};

function said<K extends KindName>(
  kind: K,
  draft: object,
  labels: FormLabels<K> = {},
  before: RecordOf<K> | null = null,
  beside: ClubRecords = club,
): [field: string, sentence: string][] {
  const faults = formFaults(kind, draft, before, { club: beside, today, labels, writes });
  return faults.map(({ field, message }) => [field, message]);
}

/** A record of the small club as a form for a new one would hold it. */
function draftOf<K extends KindName>(kind: K, change: Partial<RecordOf<K>>): Omit<RecordOf<K>, 'id'> {
  const { id: _id, ...draft } = { ...(club[kind][0] as RecordOf<K>), ...change };
  return draft;
}

describe('a form says', () => {
  test('by its own labels and units what the shape of the kind refuses', () => {
    const labels = { untilOn: 'Last day', leastBoxM: 'Box' };
    const early = draftOf('restriction', { fromOn: '2026-11-02', untilOn: '2026-11-01' });
    expect(said('restriction', early, labels)).toEqual([
      ['untilOn', 'Last day is the day 2026-11-01; it must be no earlier than the first day.'],
    ]);
    const bench = draftOf('restriction', { lift: 'bench', leastBoxM: 0.254 });
    expect(said('restriction', bench, labels)).toEqual([
      ['leastBoxM', 'Box is 10 in; it must be empty for a lift without a box.'],
    ]);
  });

  test('of every date which years there are, also of what is planned or ends', () => {
    const [late, early] = ['no later than the day 2199-12-31.', 'no earlier than the day 1900-01-01.'];
    const dates = [
      ['restriction', draftOf('restriction', { fromOn: '1899-12-31', untilOn: '2200-01-01' })],
      ['absence', draftOf('absence', { fromOn: '1899-12-31', untilOn: '9999-12-31' })],
    ] as const;
    for (const [kind, draft] of dates)
      expect(said<'absence' | 'restriction'>(kind, draft)).toEqual([
        ['fromOn', `fromOn is "1899-12-31"; it must be ${early}`],
        ['untilOn', expect.stringMatching(new RegExp(`it must be ${late}$`))],
      ]);
    expect(said('meet', draftOf('meet', { date: '9999-01-01' }), { date: 'Day' })).toEqual([
      ['date', `Day is "9999-01-01"; it must be ${late}`],
    ]);
    expect(said('season', draftOf('season', { fromOn: '1899-12-31' }))).toHaveLength(1);
    const [first, last] = ['1900-01-01', '2199-12-31'];
    expect(said('absence', draftOf('absence', { fromOn: first, untilOn: last }))).toEqual([]);
    // What was kept before the years were judged can still be changed.
    const kept = { ...club.absence[0]!, untilOn: '9999-12-31' };
    expect(said('absence', { ...kept, why: 'ill' }, {}, kept)).toEqual([]);
  });

  test('what cannot be beside the rest of the club', () => {
    const { bandPair, bandReading } = club;
    const slack = draftOf('bandReading', { lengthM: 0.9906 });
    expect(said('bandReading', slack, { lengthM: 'Loop length' })).toEqual([
      [
        'lengthM',
        `Loop length is 39 in; it must be more than ${writes.lengthText(bandPair[0]!.restLengthAM)}, the rest length of band a of pair "Wide 1".`,
      ],
    ]);
    const long = { ...bandPair[0]!, restLengthAM: bandReading[0]!.lengthM };
    const [[field, sentence]] = said('bandPair', long, { restLengthAM: 'At rest' }, bandPair[0]) as [
      [string, string],
    ];
    expect([field, sentence.slice(0, 10)]).toEqual(['restLengthAM', 'At rest is']);
    expect(said('bar', draftOf('bar', { label: 'LONG bar' }))).toHaveLength(1);
    expect(said('anchor', draftOf('anchor', { rackId: 'gone', label: 'high' }), { rackId: 'Rack' })).toEqual([
      ['rackId', 'Rack is "gone"; the club has no rack with that id.'],
    ]);
  });

  test('a date that lies ahead of today as the reader writes dates', () => {
    const ahead = draftOf('bodyMass', { takenOn: '2026-11-26' });
    expect(said('bodyMass', ahead, { takenOn: 'Weighed on' })).toEqual([
      ['takenOn', 'Weighed on is the day 2026-11-26; it must be no later than today, the day 2026-11-25.'],
    ]);
  });

  test('nothing of what is needed and still empty, but what cannot stay empty beside other fields', () => {
    expect(said('bodyMass', { ...draftOf('bodyMass', {}), massKg: null })).toEqual([]);
    expect(said('bar', { ...draftOf('bar', {}), label: '' })).toEqual([]);
    const [[field, sentence]] = said(
      'restriction',
      draftOf('restriction', { leastBoxM: null, mostShare: null }),
      { mostShare: 'At most' },
    ) as [[string, string]];
    expect(field).toBe('mostShare');
    expect(sentence).toMatch(/^At most is empty; say how deep/);
    expect(said('rack', draftOf('rack', { label: 'Other', lifts: [] })).map(([at]) => at)).toEqual(['lifts']);
  });

  test('nothing of a record as the club has it', () => {
    for (const kind of ['rack', 'hookup', 'best', 'lifter', 'bandPair', 'restriction'] as const)
      expect(said(kind, club[kind][0]!, {}, club[kind][0] as never), kind).toEqual([]);
  });
});

test.each<[KindName, object]>([
  ['liftHeights', { bottomM: 1.2, lockoutM: 1.2 }],
  ['hookup', { way: 'choked', spentM: null, label: 'Other' }],
  ['hookup', { way: 'single', spentM: 0.1, label: 'Other' }],
  ['restriction', { untilOn: '2026-01-01' }],
  ['bar', { massKg: 101, label: 'Other' }],
])('a %s that no form would take is refused of a file too, at the same field', (kind, change) => {
  const wrong = { ...draftOf(kind, change as never), id: 'new' };
  const [[field]] = said(kind, wrong) as [[string, string]];
  const { problems } = readCsv(kind, writeCsv(kind, [wrong as never]), club, { newId: () => 'new', today });
  const snake = field.replaceAll(/[A-Z]/g, (capital) => `_${capital.toLowerCase()}`);
  expect(problems.map(({ column }) => column)).toEqual([snake]);
});
