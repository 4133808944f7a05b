import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { type GivenSet, givenSet, type LoggedSet } from '#contract/records/loggedSet.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { againstLog } from './againstLog.ts';
import { readLog } from './readLog.ts';
import { writeLog } from './writeLog.ts';

/** No set of these tests is dated later; how a date ahead is refused has a test of its own. */
const LAST_DAY = '2090-01-01';

const rack = twoLifters().rack[0]!;
const hookup = twoLifters().hookup[0]!;
const anchor = twoLifters().anchor[0]!;

/** Names that a file must not stumble over: two lifters of one name, signs that lists use, a label in two racks. */
const club: ClubRecords = {
  ...twoLifters(),
  lifter: ['l1', 'l2', 'l3'].map((id, i) => ({
    ...twoLifters().lifter[0]!,
    id,
    name: i < 2 ? 'Ida Quill' : '=Tor',
  })),
  bandPair: ['Wide 1', 'a; b @ c\\', 'p1'].map((label, i) => ({
    ...twoLifters().bandPair[0]!,
    id: `p${i + 1}`,
    label,
  })),
  rack: ['Window', 'Door; left'].map((label, i) => ({ ...rack, id: `r${i + 1}`, label, lifts: ['squat'] })),
  anchor: ['r1', 'r2'].map((rackId) => ({ ...anchor, id: `a-${rackId}`, rackId })),
  hookup: ['r1', 'r2'].map((rackId) => ({
    ...hookup,
    id: `h-${rackId}`,
    rackId,
    anchorId: `a-${rackId}`,
    label: 'low',
  })),
  chainPair: ['Heavy', '2 x 4'].map((label, i) => {
    return {
      id: `c${i + 1}`,
      label,
      massPerMetreKg: 5,
      lengthM: 1.6,
      attachBelowBarM: 0,
      pairs: 3,
      note: '',
    };
  }),
};

const date = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((moment) => moment.toISOString().slice(0, 10));
const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const speeds = fc.array(figure(0, 5), { maxLength: 1 });
const start = fc.oneof(
  fc.record({ way: fc.constantFrom('free' as const, 'paused' as const), heightM: fc.constant(null) }),
  fc.record({ way: fc.constantFrom('box' as const, 'deficit' as const), heightM: figure(0, 3) }),
);
const setup = fc.constantFrom('r1', 'r2').chain((rackId) =>
  fc.record({
    rackId: fc.constant(rackId),
    start,
    barKg: figure(0, 1000),
    bands: fc.array(
      fc.constantFrom('p1', 'p2', 'p3').map((bandPairId) => ({ bandPairId, hookupId: `h-${rackId}` })),
      { maxLength: 3 },
    ),
    chains: fc.array(
      fc.record({ chainPairId: fc.constantFrom('c1', 'c2'), pairs: fc.integer({ min: 1, max: 10 }) }),
      { maxLength: 2 },
    ),
  }),
);
const set: fc.Arbitrary<GivenSet> = fc
  .record({
    lifterId: fc.constantFrom('l1', 'l2', 'l3'),
    doneOn: date,
    order: fc.integer({ min: 1, max: 1000 }),
    lift: fc.constantFrom('squat', 'bench', 'deadlift'),
    equipment: fc.constantFrom('raw', 'wraps', 'single-ply', 'multi-ply'),
    setup,
    reps: fc.constant(3),
    made: fc.integer({ min: 0, max: 2 }),
    stoppedAtS: fc.option(figure(-0.2, 1)),
    meanSpeedsMps: speeds,
    peakSpeedsMps: speeds,
    repsInReserve: fc.option(fc.integer({ min: 0, max: 30 }).map((halves) => halves / 2)),
    restS: fc.option(fc.integer({ min: 0, max: 7200 })),
    bodyMassKg: fc.option(figure(20, 300)),
    barChecked: fc.boolean(),
    platform: fc.boolean(),
    place: fc.string({
      unit: fc.constantFrom('a', '=', "'", '"', ';', ',', '\n', '\r', '@', ' '),
      maxLength: 9,
    }),
    note: fc.string({ unit: fc.constantFrom('-', '+', "'", '"', '\t', '\n', 'é', '\u2028'), maxLength: 9 }),
  })
  .map((fields) => givenSet.parse(fields));

function logged(sets: readonly GivenSet[]): LoggedSet[] {
  const moment = { loggedAt: '2026-11-25T05:00:00.000Z', struckAt: null };
  return sets.map((one, i) => ({ ...one, id: `s${i}`, order: one.order ?? 1, ...moment }));
}

describe('our own file', () => {
  test('is read back exactly, whatever a set holds, and brings nothing that the log has', () => {
    fc.assert(
      fc.property(fc.array(set, { maxLength: 4 }), (sets) => {
        const read = readLog(writeLog(logged(sets), club, []), null, club, LAST_DAY);
        expect(read).toMatchObject({ sets, problems: [], rows: sets.length });
        expect(againstLog(read.sets, logged(sets))).toEqual([]);
      }),
    );
  });

  test('has the columns that the guide names', () => {
    const guide = readFileSync(new URL('../../docs/guide/log-csv.md', import.meta.url), 'utf8');
    expect(guide).toContain(`\n${writeLog([], club, [])}\`\`\``);
  });

  test('leaves struck sets out and gives no spreadsheet a formula to run', () => {
    const [one] = logged([givenSet.parse({ ...plain, lifterId: 'l3', note: '=1+1' })]);
    const text = writeLog([one!, { ...one!, struckAt: '2026-11-25T05:00:00.000Z' }], club, []);
    expect(text.trimEnd().split('\n')).toHaveLength(2);
    expect(text).toContain(",'=Tor,");
    expect(text).toMatch(/,'=1\+1\n$/);
  });
});

const plain = {
  lifterId: 'l1',
  doneOn: '2026-01-13',
  lift: 'squat',
  setup: { start: { way: 'free' }, barKg: 100 },
  reps: 1,
  made: 1,
};

describe("a club's own spreadsheet", () => {
  const header = 'Day;Name;Exercize;Weight (lbs);Sets;Reps;Box height in;RPE;Rest (min);Comments;Mood';

  test('is understood by its headers, in pounds and inches, with decimal commas and sets that are alike', () => {
    const text = `${header}\n13/01/2026;=tor;Box Squat;225,5;3;5;14;8,5;2,5;"good, fast";7\n`;
    const { sets, suggested, notTaken, units, problems } = readLog(text, null, club, LAST_DAY);
    expect(problems).toEqual([]);
    expect(notTaken).toEqual(['Mood']);
    expect(suggested).toEqual({
      date: 'Day',
      lifter: 'Name',
      lift: 'Exercize',
      bar: 'Weight (lbs)',
      sets: 'Sets',
      reps: 'Reps',
      startHeight: 'Box height in',
      effort: 'RPE',
      rest: 'Rest (min)',
      note: 'Comments',
    });
    expect(units).toEqual({ bar: 'lb', startHeight: 'in', rest: 'min' });
    expect(sets).toHaveLength(3);
    const { setup: on, ...done } = sets[0]!;
    expect(done).toMatchObject({
      doneOn: '2026-01-13',
      lifterId: 'l3',
      lift: 'squat',
      made: 5,
      restS: 150,
      repsInReserve: 1.5,
    });
    // NIST SP 811: 1 lb = 0.45359237 kg, 1 in = 0.0254 m.
    expect(on.barKg).toBeCloseTo(225.5 * 0.45359237, 9);
    expect(on.start).toEqual({ way: 'box', heightM: 14 * 0.0254 });
  });

  test('takes the columns that the coach names, and says which cannot be', () => {
    const text = 'A,B,C,D,E\n2026-01-13,l1,bench,100,5\n';
    const columns = { date: 'A', lifter: 'B', lift: 'C', bar: 'D', reps: 'E' };
    expect(readLog(text, columns, club, LAST_DAY).sets).toMatchObject([
      { lift: 'bench', reps: 5, setup: { barKg: 100 } },
    ]);
    const wrong = readLog(text, { ...columns, bar: 'F', shoe: 'A' }, club, LAST_DAY);
    expect(wrong.sets).toEqual([]);
    expect(wrong.problems.map(({ column }) => column)).toEqual(['bar', 'shoe']);
    expect(readLog(text, null, club, LAST_DAY).problems.map(({ line }) => line)).toEqual([1, 1, 1, 1, 1]);
  });

  test.each([
    ['Squat', { lift: 'squat', way: 'free' }],
    ['paused bench press', { lift: 'bench', way: 'paused' }],
    ['Press', { lift: 'bench', way: 'free' }],
    ['BOARD PRESS', { lift: 'bench', way: 'boards' }],
    ['Deadlift from a deficit', { lift: 'deadlift', way: 'deficit' }],
    ['pin squats', { lift: 'squat', way: 'pins' }],
  ])('knows what %s means', (name, { lift, way }) => {
    const height = way === 'free' || way === 'paused' ? '' : '0.1';
    const text = `date,lifter,lift,bar,reps,start_height_m\n2026-01-13,l1,${name},100,5,${height}\n`;
    expect(readLog(text, null, club, LAST_DAY).sets).toMatchObject([{ lift, setup: { start: { way } } }]);
  });

  test('reads dates only where the file as a whole tells day from month', () => {
    expect(datesFile('03/04/2026', '31/05/2026').sets.map(({ doneOn }) => doneOn)).toEqual([
      '2026-04-03',
      '2026-05-31',
    ]);
    expect(datesFile('03/04/2026', '05/31/2026', '2026-01-02').sets.map(({ doneOn }) => doneOn)).toEqual([
      '2026-03-04',
      '2026-05-31',
      '2026-01-02',
    ]);
    expect(datesFile('4.4.2026').sets.map(({ doneOn }) => doneOn)).toEqual(['2026-04-04']);
    for (const dates of [
      ['03/04/2026', '2026-12-31'],
      ['31/05/2026', '05/31/2026'],
      ['31/02/2026'],
      ['3/4/26'],
      ['2026-13-01'],
    ]) {
      const { sets, problems } = datesFile(...dates);
      expect(sets).toEqual([]);
      expect(problems[0]).toMatchObject({ line: 2, column: 'date' });
      expect(problems[0]?.message).toMatch(/^[^]*\.$/);
    }
  });

  test('hangs a pair where only one hookup can be meant, and asks where several can', () => {
    const hung = { rackId: 'r1', bands: [{ bandPairId: 'p1', hookupId: 'h-r1' }] };
    expect(bandsFile('wide 1', 'Window').sets).toMatchObject([{ setup: hung }]);
    expect(bandsFile('Wide 1 @ low @ window', '').sets).toMatchObject([{ setup: hung }]);
    expect(bandsFile('Wide 1', '').problems).toMatchObject([{ line: 2, column: 'bands' }]);
    expect(bandsFile('Wide 9 @ low', 'Window').problems).toMatchObject([{ line: 2, column: 'bands' }]);
  });
});

describe('against the log', () => {
  test('a set without an order is taken as often as the file has it and the log does not', () => {
    const fresh = againstLog([given(), given(), given()], logged([given({ order: 3 })]));
    expect(fresh.map(({ set: { order }, at }) => [order, at])).toEqual([
      [4, 1],
      [5, 2],
    ]);
    const then = logged([given({ order: 3 }), ...fresh.map(({ set }) => set)]);
    expect(againstLog([given(), given(), given()], then)).toEqual([]);
  });

  test('what differs in lifter, day, lift, setup, reps or order is another set', () => {
    const log = logged([given({ order: 1 })]);
    const others = [
      { lifterId: 'l2' },
      { doneOn: '2026-01-14' },
      { lift: 'deadlift' },
      { setup: { ...plain.setup, barKg: 100.5 } },
      { setup: { ...plain.setup, start: { way: 'paused' } } },
      { reps: 2 },
      { order: 2 },
    ];
    for (const other of others) expect(againstLog([given({ order: 1, ...other })], log)).toHaveLength(1);
    expect(againstLog([given({ order: 1, note: 'same' })], log)).toEqual([]);
  });

  test('years of history: 30,000 lines come out as 30,000 sets, and as none the second time', () => {
    const lines = Array.from({ length: 30_000 }, (_, i) => {
      const day = new Date(Date.UTC(2024, 0, 1 + (i % 700))).toISOString().slice(0, 10);
      return `${day},l${1 + (i % 3)},squat,${60 + (i % 97)},${1 + (i % 5)}`;
    });
    const { sets, problems } = readLog(
      `date,lifter,lift,bar,reps\n${lines.join('\n')}\n`,
      null,
      club,
      LAST_DAY,
    );
    expect(problems).toEqual([]);
    const fresh = againstLog(sets, []).map(({ set }) => set);
    expect(fresh).toHaveLength(30_000);
    const places = new Set(fresh.map(({ lifterId, doneOn, order }) => `${lifterId} ${doneOn} ${order}`));
    expect(places.size).toBe(30_000);
    expect(fresh.reduce((sum, { setup: { barKg } }) => sum + barKg, 0)).toBe(
      Array.from({ length: 30_000 }, (_, i) => 60 + (i % 97)).reduce((sum, kg) => sum + kg, 0),
    );
    expect(againstLog(sets, logged(fresh))).toEqual([]);
  });
});

function datesFile(...dates: string[]) {
  const lines = dates.map((day) => `${day},l1,squat,100,5`);
  return readLog(['date,lifter,lift,bar,reps', ...lines].join('\n'), null, club, LAST_DAY);
}

function bandsFile(bands: string, where: string) {
  const line = `2026-01-13,l1,squat,100,5,${bands},${where}`;
  return readLog(`date,lifter,lift,bar,reps,bands,rack\n${line}\n`, null, club, LAST_DAY);
}

function given(fields: object = {}): GivenSet {
  return givenSet.parse({ ...plain, ...fields });
}
