import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ComparisonReport } from '#contract/comparison/comparisonReport.ts';
import { planComparisonOperation } from '#contract/compute/planComparisonOperation.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import { weighComparisonOperation } from '#contract/compute/weighComparisonOperation.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { type AskedComparison, askedPlan } from './askedPlan.ts';
import { askedWeighing } from './askedWeighing.ts';
import { clubTests } from './clubTests.ts';
import type { LookedAt } from './lookedAt.ts';
import { plannedComparison } from './plannedComparison.ts';
import { toldComparison } from './toldComparison.ts';

// Everybody and every set here is made up.

const club = twoLifters();
const tall = club.lifter.find(({ id }) => id === 'tall')!;
const ids = Array.from({ length: 10 }, (_, i) => `l${i}`);
const records = {
  ...club,
  best: [],
  lifter: ids.map((id, i) => ({
    ...tall,
    id,
    name: `Lifter ${i}`,
    bornOn: i === 0 ? '2009-06-01' : i === 1 ? null : '1990-06-01',
    category: i % 2 === 0 ? ('women' as const) : ('men' as const),
    leftOn: i === 3 ? '2026-02-01' : null,
  })),
  bodyMass: ids.map((id, i) => ({ id: `m${i}`, lifterId: id, takenOn: '2026-01-01', massKg: 60 + 4 * i })),
  liftHeights: club.liftHeights
    .filter(({ lifterId }) => lifterId === 'tall')
    .flatMap((one) => ids.map((id) => ({ ...one, id: `h ${id}`, lifterId: id }))),
  restriction: [
    {
      id: 'r',
      lifterId: 'l2',
      lift: 'squat' as const,
      leastBoxM: null,
      mostShare: 0.6,
      shareOf: 'bar' as const,
      fromOn: '2026-02-20',
      untilOn: null,
      note: '',
    },
  ],
};
const wish: AskedComparison = {
  ways: ['early', 'late'],
  startsOn: '2026-03-02',
  weeks: 12,
  seed: 3,
  of: { outcome: 'platform', lift: 'squat' },
  lifterIds: ids,
  takenOutIds: ['l4'],
};
const planned = async (of: Partial<AskedComparison> = {}) =>
  (await runOperation(planComparisonOperation, {
    ...(await askedPlan(records, [], [], { ...wish, ...of })),
    plays: 50,
  })) as ComparisonPlan;

describe('a comparison planned from the records of a club', () => {
  it('draws nobody who is a minor, of unknown age, restricted, taken out or gone, and mixes no sexes in a pair', async () => {
    const { drawn, notDrawn } = await planned();
    expect(Object.fromEntries(notDrawn.map(({ lifterId, reason }) => [lifterId, reason]))).toEqual({
      l0: 'minor',
      l1: 'ageNotKnown',
      l2: 'restricted',
      l4: 'takenOut',
    });
    const pairs = drawn.map(({ lifterId, pair }) => [lifterId, pair]);
    // Men l5, l7, l9 by body mass, women l6 and l8.
    expect(pairs.filter(([, pair]) => pair === null)).toHaveLength(1);
    expect(drawn.find(({ lifterId }) => lifterId === 'l6')!.pair).toBe(
      drawn.find(({ lifterId }) => lifterId === 'l8')!.pair,
    );
    expect(drawn.map(({ lifterId }) => lifterId)).not.toContain('l3');
  });

  it('lets the restricted take part once the restriction has ended', async () => {
    const later = { ...records, restriction: [{ ...records.restriction[0]!, untilOn: '2026-03-01' }] };
    expect(
      (await askedPlan(later, [], [], wish)).lifters.find(({ lifterId }) => lifterId === 'l2'),
    ).toMatchObject({
      restricted: false,
    });
  });
});

const hard = (id: string, on: string, kg: number, change: Parameters<typeof loggedSquat>[3] = {}) =>
  loggedSquat(id, on, kg, { lifterId: 'l5', repsInReserve: 0, ...change });
const tests = (of: LookedAt, sets: ReturnType<typeof hard>[]) => clubTests(records, sets, [], of);

describe('what a comparison looks at', () => {
  const banded = { rackId: 'rack', bands: [{ bandPairId: 'light', hookupId: 'doubled' }] };

  it('is at meets the best of each day in the own equipment', async () => {
    const meet = { platform: true };
    const sets = [
      hard('a', '2026-01-10', 180, meet),
      hard('b', '2026-01-10', 190, meet),
      hard('c', '2026-02-10', 260, { ...meet, equipment: 'multi-ply' }),
      hard('d', '2026-02-11', 200),
    ];
    expect(await tests({ outcome: 'platform', lift: 'squat' }, sets)).toEqual([
      { lifterId: 'l5', on: '2026-01-10', value_kg: 190 },
    ]);
  });

  it("is of a setup each lifter's own most done one, with the pull of its bands", async () => {
    const sets = [
      hard('a', '2026-01-10', 120, { with: banded }),
      hard('b', '2026-01-17', 122, { with: banded }),
      hard('c', '2026-01-24', 150),
    ];
    const found = await tests(
      { outcome: 'setup', lift: 'squat', family: { way: 'free', hung: 'bands' } },
      sets,
    );
    expect(found.map(({ on }) => on)).toEqual(['2026-01-10', '2026-01-17']);
    expect(found[1]!.value_kg - found[0]!.value_kg).toBeCloseTo(2, 9);
    expect(found[0]!.value_kg).toBeGreaterThan(125);
  });
});

it('does not read the log where the estimates are looked at', async () => {
  const unread: Long<LoggedSet> = {
    [Symbol.iterator]() {
      throw new Error('The log was read.');
    },
  };
  expect(await clubTests(records, unread, [], { outcome: 'strength', lift: 'squat' })).toEqual([]);
});

describe('a drawn comparison weighed by the log since', () => {
  it('finds what the log was made with, counts everybody as drawn, and takes out who left the club', async () => {
    const { restriction: _, ...others } = records;
    const all = {
      ...others,
      restriction: [],
      lifter: records.lifter.map((one) => ({ ...one, bornOn: '1990-06-01' })),
    };
    const plan = (await runOperation(planComparisonOperation, {
      ...(await askedPlan(all, [], [], { ...wish, takenOutIds: [] })),
      plays: 50,
    })) as ComparisonPlan;
    const sets = plan.drawn.flatMap(({ lifterId, way }, i) =>
      ['2026-02-25', '2026-03-25', '2026-04-25', '2026-05-25'].map((on, k) =>
        loggedSquat(
          `${lifterId} ${on}`,
          on,
          (150 + 5 * i) * (1 + (way === 'late' ? 0.02 * k : 0)) + Math.sin(5 * i + k) / 2,
          {
            lifterId,
            repsInReserve: 0,
          },
        ),
      ),
    );
    const gone = {
      ...all,
      lifter: all.lifter.map((one) => (one.id === 'l5' ? { ...one, leftOn: '2026-04-01' } : one)),
    };
    const of: LookedAt = { outcome: 'setup', lift: 'squat', family: { way: 'free', hung: 'straight' } };
    const asked = await askedWeighing(gone, sets, [], plan, of, new Map([['l6', '2026-05-01']]));
    const report = (await runOperation(weighComparisonOperation, asked)) as ComparisonReport;
    expect(report.difference_percent!.low95).toBeLessThan(6);
    expect(report.difference_percent!.high95).toBeGreaterThan(6);
    expect(report.difference_percent!.low95).toBeGreaterThan(4);
    expect(Object.fromEntries(report.leftEarly.map(({ lifterId, lastOn }) => [lifterId, lastOn]))).toEqual({
      l5: '2026-03-25',
      l6: '2026-04-25',
    });
  });
});

const believed = (kg: number) => ({ median: kg, low80: kg, high80: kg, low95: kg, high95: kg });

describe('a club of two hundred lifters over two years', () => {
  const [startsOn, weeks] = ['2026-03-02', 104];
  const many = Array.from({ length: 200 }, (_, i) => ({ ...tall, id: `m${i}`, name: `Lifter ${i}` }));
  const crowd = { ...club, lifter: many.map((one) => ({ ...one, bornOn: '1990-06-01', leftOn: null })) };
  const of = { outcome: 'strength', lift: 'squat', family: null } as const;
  /** A point a week, which rises by one way in thousandths and by the other not at all. */
  const estimatesFrom = (day: string, gainOf: (id: string) => number) =>
    many.map(({ id }, i): StrengthEstimate => {
      const history = Array.from({ length: weeks + 1 }, (_, week) => ({
        on: dateOfDay(dayNumber(day) + 7 * week),
        ...believed((120 + i) * Math.exp(gainOf(id) * week + Math.sin(7 * i + week) / 200)),
      }));
      const { on } = history.at(-1)!;
      return {
        lifterId: id,
        lift: 'squat',
        on,
        setCount: 500,
        takenIn: 0,
        lastSetOn: on,
        bodyMassKg: 90,
        bodyMassKnown: 'measured',
        maxKg: believed(120 + i),
        inEquipment: [],
        parameters: [],
        history,
        rise: [],
        observations: [],
        slips: [],
        leftOut: [],
        draws: [],
      };
    });

  it('is foretold, and told at its end, by every week of everybody', async () => {
    const wishes = { ...of, ways: ['early', 'late'], startsOn, weeks, lifterIds: many.map(({ id }) => id) };
    const before = estimatesFrom('2024-03-04', () => 0);
    const { plan } = await plannedComparison(crowd, [], before, wishes, 3, 50);
    expect(plan.drawn).toHaveLength(200);
    expect(plan.scatter).toMatchObject({ known: 'measured', lifters: 200, tests: 200 * 105 });
    const wayOf = new Map(plan.drawn.map(({ lifterId, way }) => [lifterId, way]));
    const after = estimatesFrom(startsOn, (id) => (wayOf.get(id) === 'late' ? 0.001 : 0));
    const kept = { ...of, id: 'c', title: 'Early or late', planDocument: plan, drawnOn: startsOn, note: '' };
    const told = await toldComparison(
      crowd,
      [],
      after,
      { ...kept, firstMethodId: null, secondMethodId: null },
      plan.endsOn,
    );
    // A thousandth a week of ln over 104 weeks.
    expect(told.report!.difference_percent!.value).toBeCloseTo(100 * Math.expm1(0.104), 0);
  });
});
