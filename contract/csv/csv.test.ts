import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClubRecords, type KindName, kindNames, type RecordOf } from '#contract/records/allKinds.ts';
import { labelKey } from '#contract/records/labels.ts';
import { referredBy } from '#contract/records/references.ts';
import { arbitraryRecord } from '#contract/tests/arbitraryRecord.ts';
import { emptyClub } from '#contract/tests/emptyClub.ts';
import { readCsv } from './readCsv.ts';
import { writeCsv } from './writeCsv.ts';

/** No record of these tests is dated later; how a date ahead is refused has a test of its own. */
const LAST_DAY = '2100-01-01';

const neverNew = {
  newId: () => {
    throw new Error('No line of this file needs a new id.');
  },
  today: LAST_DAY,
};

function clubOf(lists: { [K in KindName]?: object[] }): ClubRecords {
  return { ...emptyClub(), ...lists } as unknown as ClubRecords;
}

/** A club with nothing but the records that these refer to: of lifters all of age, of comparisons all who are named. */
function clubReferredBy<K extends KindName>(kind: K, records: RecordOf<K>[]): ClubRecords {
  const club: Record<KindName, object[]> = clubOf({});
  const drawn = records.filter((record) => 'lifterId' in record);
  for (const { reference, id } of records.flatMap((record) => referredBy(kind, record))) {
    club[reference.to].push({ id, label: id, bornOn: '1950-01-01', planDocument: { drawn } });
  }
  return club as ClubRecords;
}

function headerOf(kind: KindName): string {
  return writeCsv(kind, []).trimEnd();
}

/** A club keeps one document for each version of a method. */
function versionOf(record: object): string | null {
  if (!('methodDocument' in record)) return null;
  const { id, version } = record.methodDocument as RecordOf<'method'>['methodDocument'];
  return `${id} ${version}`;
}

describe('a file that was written', () => {
  test.each(kindNames)('of %s is read back exactly', (kind) => {
    const records = fc.uniqueArray(arbitraryRecord(kind), {
      maxLength: kind === 'club' ? 1 : 6,
      comparator: (a, b) =>
        a.id === b.id ||
        (labelKey(a) !== null && labelKey(a) === labelKey(b)) ||
        (versionOf(a) !== null && versionOf(a) === versionOf(b)),
    });
    fc.assert(
      fc.property(records, (written) => {
        const club = clubReferredBy(kind, written);
        // A file holds one club and only changes it.
        if (kind === 'club') Object.assign(club, { club: written });
        const text = writeCsv(kind, written);
        expect(readCsv(kind, text, club, neverNew)).toMatchObject({ records: written, problems: [] });
        expect(readCsv(kind, `\ufeff${text}`, club, neverNew).records).toEqual(written);
      }),
    );
  });

  test('names the unit of every quantity in its header', () => {
    expect(headerOf('bandReading')).toBe('id,band_pair_id,side,taken_on,length_m,force_N,direction');
    expect(headerOf('bar')).toBe('id,label,mass_kg,weighed,note');
    expect(headerOf('scaleReading')).toBe('id,hookup_id,band_pair_id,taken_on,bar_height_m,pair_force_N');
    expect(headerOf('club')).toContain('latitude_deg,height_above_sea_m');
  });

  // OWASP, "CSV Injection": cells that begin with = + - @ tab or carriage return may be run as formulas.
  test('gives no spreadsheet a formula to run', () => {
    const text = fc
      .tuple(fc.constantFrom('=', '+', '-', '@', '\t', '\r'), fc.string())
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, (note) => {
        const csv = writeCsv('bar', [{ id: 'a', label: 'A', massKg: 20, weighed: false, note }]);
        const cell = csv.split('\n').slice(1).join('\n').slice('a,A,20,no,'.length);
        expect(cell).toMatch(/^"?'/);
      }),
    );
  });
});

describe('a file that is read', () => {
  const bar = { id: 'bar-1', label: 'Long', massKg: 20, weighed: true, note: 'kept' };
  const wide = { id: 'pair-1', label: 'Wide 1' };
  const club = clubOf({ bar: [bar], bandPair: [wide, { id: 'pair-2', label: 'Wide 2' }] });
  let count = 0;
  const making = {
    newId: () => {
      count += 1;
      return `new-${count}`;
    },
    today: LAST_DAY,
  };

  test('changes known ids, adds unknown ones as given, and makes ids where there are none', () => {
    count = 0;
    const text = 'label,id,mass_kg\nLong,bar-1,20.3\nShort,mine,10\nThick,,25\n';
    expect(readCsv('bar', text, club, making)).toEqual({
      records: [
        { ...bar, massKg: 20.3 },
        { id: 'mine', label: 'Short', massKg: 10, weighed: false, note: '' },
        { id: 'new-1', label: 'Thick', massKg: 25, weighed: false, note: '' },
      ],
      added: 2,
      changed: 1,
      problems: [],
      questions: [],
    });
  });

  test('counts a line that says what the club has already as no change', () => {
    const text = 'id,label,mass_kg,weighed\nbar-1,Long,20,yes\nnew,Short,10,no\n';
    expect(readCsv('bar', text, club, making)).toMatchObject({ added: 1, changed: 0 });
    const heavier = text.replace('Long,20', 'Long,20.3');
    expect(readCsv('bar', heavier, club, making)).toMatchObject({ added: 1, changed: 1 });
  });

  test.each([';', '\t'])('may have %j between its cells, and line ends of either sort', (between) => {
    const text = [`label`, `mass_kg`].join(between) + `\r\n` + ['A, thick', '25'].join(between) + '\r\n';
    const { records } = readCsv('bar', text, club, making);
    expect(records).toMatchObject([{ label: 'A, thick', massKg: 25 }]);
  });

  test('takes the label of a band pair for its id, whatever its capitals', () => {
    const text = 'band_pair_id,side,taken_on,length_m,force_N\nwide 2,a,2026-11-25,1.5,210\n';
    const { records, problems } = readCsv('bandReading', text, club, making);
    expect(problems).toEqual([]);
    expect(records[0]?.bandPairId).toBe('pair-2');
  });

  test('looks for the label of an anchor point within the rack of the line', () => {
    const racks = clubOf({
      rack: [
        { id: 'r1', label: 'One' },
        { id: 'r2', label: 'Two' },
      ],
      anchor: [
        { id: 'a1', rackId: 'r1', label: 'low' },
        { id: 'a2', rackId: 'r2', label: 'low' },
      ],
    });
    const text = 'anchor_id,rack_id,label,way,lifts\nlow,Two,doubled,doubled,"[""squat""]"\n';
    expect(readCsv('hookup', text, racks, making).records[0]?.anchorId).toBe('a2');
  });

  test('reports every wrong line by line and column', () => {
    const text = [
      'id,label,mass_kg,weighed,note',
      'bar-1,Long,-3,yes,"two',
      'lines"',
      ',Short,"20,5",perhaps,',
      ',,25,no,',
      '',
      ',Thick,25,no',
      ',LONG,25,no,',
      ',long,25,no,',
    ].join('\n');
    const { problems } = readCsv('bar', text, club, making);
    expect(problems.map(({ line, column }) => [line, column])).toEqual([
      [2, 'mass_kg'],
      [4, 'mass_kg'],
      [4, 'weighed'],
      [5, 'label'],
      [7, ''],
      [8, 'label'],
      [9, 'label'],
    ]);
    for (const { message } of problems) expect(message).toMatch(/^[^.].*\.$/s);
  });

  test.each([
    ['an unknown column', 'bar', 'label,colour\nA,x\n', 1, 'colour'],
    ['a column twice', 'bar', 'label,label\nA,B\n', 1, 'label'],
    ['nothing at all', 'bar', '', 1, ''],
    ['a workbook', 'bar', 'PK\u0003\u0004\u0014\u0000', 1, ''],
    ['an archive', 'bar', '{\n"format":"x"}\n', 1, ''],
    ['letters of another encoding', 'bar', 'label,mass_kg\nA,20\n\ufffdl,20\n', 3, ''],
    ['a decimal comma between commas', 'bar', 'label,mass_kg\nA,20,5\n', 2, ''],
    ['an open quote', 'bar', 'label,mass_kg\nA,"20\n', 2, ''],
    ['an id twice', 'bar', 'id,label,mass_kg\nx,A,20\nx,B,20\n', 3, 'id'],
    [
      'an owner that nobody has',
      'bodyMass',
      'lifter_id,taken_on,mass_kg\nNo One,2026-11-25,80\n',
      2,
      'lifter_id',
    ],
    ['a date that is none', 'day', 'date,groups\n2026-02-30,[]\n', 2, 'date'],
    ['a list that is none', 'rack', 'label,lifts\nA,squat\n', 2, 'lifts'],
    ['a second club', 'club', 'name\nAnother\n', 2, 'id'],
  ] as const)('is refused for %s', (_why, kind, text, line, column) => {
    const { problems, records } = readCsv(kind, text, clubOf({ club: [{ id: 'the-club' }] }), making);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ line, column });
    expect(records).toEqual([]);
  });

  test('names columns, not fields, wherever a sentence speaks of them, and an empty cell as empty', () => {
    const lifter = [{ id: 'l1', name: 'Ida Quill' }];
    const said = (cells: string) =>
      readCsv(
        'restriction',
        `lifter_id,lift,least_box_m,most_share,from_on\nl1,${cells}\n`,
        clubOf({ lifter }),
        making,
      ).problems.map(({ message }) => message);
    expect(said('bench,0.4,,2026-01-02')).toEqual([
      'least_box_m is 0.4; it must be empty for a lift without a box.',
    ]);
    expect(said('squat,,,2026-01-02')).toEqual([expect.stringMatching(/^most_share is empty; .*\.$/)]);
    expect(said('squat,0.4,,2026-01-02')).toEqual([]);
  });

  test('refuses a label that two records carry, and to change a reading', () => {
    const twins = clubOf({
      lifter: [
        { id: 'l1', name: 'Ida Quill' },
        { id: 'l2', name: 'Ida Quill' },
      ],
    });
    const mass = readCsv('bodyMass', 'lifter_id,taken_on,mass_kg\nIda Quill,2026-11-25,80\n', twins, making);
    expect(mass.problems[0]).toMatchObject({ line: 2, column: 'lifter_id' });
    const reading = {
      id: 'x',
      bandPairId: 'pair-1',
      side: 'a',
      takenOn: '2026-11-25',
      lengthM: 1.5,
      forceN: 210,
    };
    const held = { ...club, bandReading: [{ ...reading, direction: 'loading' }] } as ClubRecords;
    const changed = readCsv('bandReading', 'id,force_N\nx,250\n', held, making);
    expect(changed.problems[0]).toMatchObject({ line: 2, column: 'id' });
  });

  test('asks about a force that falls while the length grows by its line, beside what was read before, and takes it', () => {
    const pair = { ...wide, widthMm: 44, restLengthAM: 1, restLengthBM: null };
    const direction = 'loading';
    const had = {
      id: 'x',
      bandPairId: 'pair-1',
      side: 'a',
      takenOn: '2026-11-24',
      lengthM: 1.5,
      forceN: 200,
      direction,
    };
    const taut = clubOf({ bandPair: [pair], bandReading: [had] });
    const head = 'band_pair_id,side,taken_on,length_m,force_N\n';
    const ask = (lines: string) => readCsv('bandReading', head + lines, taut, making);
    // 150 N are 25 % less than the 200 N at half a metre less; band b and last year's readings are other measurings.
    const rising = 'Wide 1,a,2026-11-25,1.6,230\nWide 1,b,2026-11-25,2,150\nWide 1,a,2025-11-25,2,150\n';
    expect(ask(rising)).toMatchObject({ added: 3, problems: [], questions: [] });
    const fallen = ask('Wide 1,b,2026-11-25,1.2,50\nWide 1,a,2026-11-25,2,150\n');
    expect(fallen.records).toHaveLength(2);
    expect(fallen.questions).toEqual([
      { line: 3, column: 'force_N', message: expect.stringMatching(/^Band a of pair "Wide 1".*25 % less/) },
    ]);
    // A new shorter reading beside a known longer one is the new line's slip.
    expect(ask('Wide 1,a,2026-11-25,1.2,300\n').questions).toMatchObject([{ line: 2 }]);
    // Half of what the pair was read with on another day, at the same length; a tenth less is wear.
    const low = ask('Wide 1,a,2025-11-25,1.4,80\nWide 1,a,2025-11-25,1.5,100\n');
    expect(low.questions).toMatchObject([{ line: 3, message: expect.stringContaining('50 % less force') }]);
    expect(ask('Wide 1,a,2025-11-25,1.5,180\n').questions).toEqual([]);
  });

  test('refuses a reading of a slack loop and a rest length that makes one, by line and column', () => {
    const pair = { ...wide, widthMm: 44, restLengthAM: 1, restLengthBM: 1.1 };
    const reading = { id: 'x', bandPairId: 'pair-1', side: 'b', takenOn: '2026-11-25', lengthM: 1.5 };
    const taut = clubOf({ bandPair: [pair], bandReading: [reading] });
    const text =
      'band_pair_id,side,taken_on,length_m,force_N\nWide 1,a,2026-11-25,1.05,9\nWide 1,b,2026-11-25,1.1,9\n';
    expect(readCsv('bandReading', text, taut, making).problems).toEqual([
      {
        line: 3,
        column: 'length_m',
        message: 'length_m is 1.1; it must be more than 1.1, the rest length of band b of pair "Wide 1".',
      },
    ]);
    expect(readCsv('bandPair', 'id,rest_length_b_m\npair-1,1.5\n', taut, making).problems).toEqual([
      {
        line: 2,
        column: 'rest_length_b_m',
        message:
          'rest_length_b_m is 1.5; it must be less than 1.5, the shortest length that band b was read at.',
      },
    ]);
  });

  test.each([
    ['bodyMass', 'lifter_id,mass_kg,taken_on\nIda Quill,80,'],
    [
      'liftHeights',
      'lifter_id,lift,start,bottom_m,lockout_m,measured_on\nIda Quill,squat,"{""way"":""free""}",0.7,1.2,',
    ],
    ['best', 'lifter_id,lift,setup,done_on\nIda Quill,squat,"{""start"":{""way"":""free""},""barKg"":100}",'],
    ['bandReading', 'band_pair_id,side,length_m,force_N,taken_on\nWide 1,a,1.5,200,'],
    ['lifter', 'name,category,born_on\nTor Fenn,men,'],
  ] as const)(
    'refuses a %s of tomorrow or of the year 26, takes one of today, and leaves one that is kept alone',
    (kind, line) => {
      const pair = { ...wide, widthMm: 44, restLengthAM: 1, restLengthBM: null };
      const people = clubOf({ bandPair: [pair], lifter: [{ id: 'l1', name: 'Ida Quill' }] });
      const on = { newId: making.newId, today: '2026-11-25' };
      const { records, problems } = readCsv(kind, `${line}2026-11-25\n`, people, on);
      expect(problems).toEqual([]);
      const column = line.split('\n')[0]!.split(',').at(-1)!;
      expect(readCsv(kind, `${line}2026-11-26\n`, people, on).problems).toEqual([
        {
          line: 2,
          column,
          message: `${column} is "2026-11-26"; it must be no later than today, 2026-11-25.`,
        },
      ]);
      expect(readCsv(kind, `${line}0026-11-25\n`, people, on).problems).toMatchObject([{ line: 2, column }]);
      const kept = { ...people, [kind]: records };
      const again = { ...on, today: '2026-11-20' };
      expect(readCsv(kind, writeCsv(kind, records), kept, again).problems).toEqual([]);
    },
  );

  test('takes a training day that lies ahead', () => {
    const on = { newId: making.newId, today: '2026-11-25' };
    expect(readCsv('day', 'date,groups\n2026-12-25,[]\n', clubOf({}), on).problems).toEqual([]);
  });
});
