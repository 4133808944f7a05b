import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ComparisonReport } from '#contract/comparison/comparisonReport.ts';
import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { noClock } from '#core/day/timeSpent.ts';
import { InputError } from './InputError.ts';
import { planComparisonOperation } from './planComparisonOperation.ts';
import { runOperation } from './runOperation.ts';
import { weighComparisonOperation } from './weighComparisonOperation.ts';

// Every lifter and figure here is made up.

const asked = { outcome: 'strength', ways: ['early', 'late'], startsOn: '2026-03-02', weeks: 12 };
const adults = (count: number) =>
  Array.from({ length: count }, (_, i) => ({ lifterId: `l${i}`, bornOn: '1990-05-01', max_kg: 150 + 5 * i }));

const plan = (lifters: object[], more: object = {}) =>
  runOperation(planComparisonOperation, { ...asked, seed: 7, plays: 50, lifters, ...more }) as Promise<
    ComparisonPlan & { sentences: string[]; cautions: string[] }
  >;
const weigh = (drawn: object[], tests: object[], more: object = {}) =>
  runOperation(weighComparisonOperation, { ...asked, outcome: 'setup', drawn, tests, ...more }) as Promise<
    ComparisonReport & { sentences: string[] }
  >;
const refusal = (asking: Promise<unknown>) =>
  asking.then(
    () => expect.fail('it was not refused'),
    (error: unknown) => (error as InputError).body.error,
  );

const date = (from: string, to: string) =>
  fc
    .date({ min: new Date(from), max: new Date(to), noInvalidDate: true })
    .map((moment) => moment.toISOString().slice(0, 10));

describe('plan-comparison', () => {
  it('says of eight lifters, before anybody starts and first of all, that it cannot be seen', async () => {
    const { foretold, sentences, cautions } = await plan(adults(8));
    expect(foretold.outlook).toBe('cannotBeSeen');
    expect(foretold.detectable_percent!).toBeGreaterThan(foretold.usualGain_percent);
    expect(sentences[0]).toMatch(
      /^This cannot be seen: with 8 lifters over 12 weeks, only a difference of \d+(\.\d)? %/,
    );
    expect(cautions.join(' ')).toMatch(/harder way.*Ask everybody first.*judgement comes first/);
  });

  it('tells how far its simulation is, play by play', async () => {
    const told: [number, number][] = [];
    const document = { ...asked, seed: 7, plays: 50, lifters: adults(8) };
    await runOperation(planComparisonOperation, document, noClock, (done, total) => told.push([done, total]));
    expect(told).toEqual(Array.from({ length: 50 }, (_, done) => [done, 50]));
  });

  it('says otherwise of a hundred whose gains and tests hardly scatter, and goes by what the club showed', async () => {
    const past = Array.from({ length: 10 }, (_, i) =>
      ['2025-12-15', '2026-01-12', '2026-02-09'].map((on, k) => ({
        lifterId: `l${i}`,
        on,
        value_kg: (100 + 10 * i) * Math.exp(0.004 * 4 * k + 0.001 * ((i + k) % 2)),
      })),
    ).flat();
    const { foretold, scatter, sentences } = await plan(adults(100), { past, leavingShare: 0 });
    expect(scatter).toMatchObject({ known: 'measured', lifters: 10, tests: 30 });
    // 0.4 % a week for twelve weeks.
    expect(foretold).toMatchObject({ outlook: 'canBeSeen', usualGainKnown: 'club' });
    expect(foretold.usualGain_percent).toBeCloseTo(100 * Math.expm1(12 * 0.004), 0);
    expect(sentences[0]).toMatch(/^This could be seen: /);
  });

  it('never draws a minor, whatever the dates, nor anybody of unknown age, restricted or taken out', async () => {
    const people = fc.array(
      fc.record({
        bornOn: fc.option(date('2007-06-01', '2008-12-31')),
        restricted: fc.boolean(),
        takenOut: fc.boolean(),
      }),
      { maxLength: 4 },
    );
    await fc.assert(
      fc.asyncProperty(people, date('2026-01-01', '2026-06-30'), async (crew, startsOn) => {
        const lifters = crew.map((one, i) => ({ ...one, lifterId: `l${i}` }));
        const { drawn, notDrawn } = await plan(lifters, { startsOn });
        const mayBe = lifters.filter(({ bornOn, restricted, takenOut }) => {
          if (bornOn === null || restricted || takenOut) return false;
          const ofAge = new Date(bornOn);
          ofAge.setUTCFullYear(ofAge.getUTCFullYear() + 18);
          return ofAge <= new Date(startsOn);
        });
        expect(drawn.map(({ lifterId }) => lifterId).sort()).toEqual(mayBe.map(({ lifterId }) => lifterId));
        expect(drawn.length + notDrawn.length).toBe(lifters.length);
      }),
    );
  });

  it('draws the same by the same seed, whoever is named first, and pairs the next in strength', async () => {
    const [once, again] = [await plan(adults(8)), await plan(adults(8).toReversed())];
    expect(again.drawn).toEqual(once.drawn);
    expect(once.drawn.map(({ lifterId, pair }) => [lifterId, pair])).toEqual(
      [1, 1, 2, 2, 3, 3, 4, 4].map((pair, i) => [`l${i}`, pair]),
    );
  });

  it('refuses a lifter named twice and a test after the start, by field and value', async () => {
    expect(await refusal(plan([...adults(2), ...adults(1)]))).toEqual({
      field: 'lifters[2].lifterId',
      message: 'lifters[2].lifterId is "l0"; it must be named once only.',
    });
    const past = [{ lifterId: 'l0', on: '2026-03-03', value_kg: 100 }];
    expect(await refusal(plan(adults(2), { past }))).toMatchObject({ field: 'past[0].on' });
  });
});

const twelve = Array.from({ length: 12 }, (_, i) => ({
  lifterId: `l${i}`,
  name: `Lifter ${i}`,
  way: i % 2 === 0 ? 'early' : 'late',
}));
/** Tests every four weeks; the late way gains `percent` more up to the end, and each lifter's tests go up and down by half a per cent. */
const testsOf = (percent: number, of = twelve) =>
  of.flatMap(({ lifterId, way }, i) =>
    ['2026-02-20', '2026-03-30', '2026-04-27', '2026-05-25'].map((on, k) => ({
      lifterId,
      on,
      value_kg:
        (100 + 10 * i) *
        (1 + (way === 'late' ? (percent / 100) * (k / 3) : 0)) *
        Math.exp(0.005 * Math.sin(7 * i + 3 * k) + 0.0003 * k * Math.cos(5 * i)),
    })),
  );

describe('weigh-comparison', () => {
  it('finds a difference that is there, says for which way, and that these are few lifters', async () => {
    const { difference_percent, sentences } = await weigh(twelve, testsOf(6));
    expect(difference_percent!.low95).toBeLessThan(6);
    expect(difference_percent!.high95).toBeGreaterThan(6);
    expect(sentences[0]).toMatch(
      /^"late" gained \d\.?\d? % of the load more than "early" from 2 Mar 2026 to 25 May 2026/,
    );
    expect(sentences[1]).toMatch(/^These are few lifters, 6 and 6/);
  });

  it('cannot tell where there is none, and says too little of two lifters a way', async () => {
    const { sentences } = await weigh(twelve, testsOf(0));
    expect(sentences[0]).toMatch(
      /^The comparison cannot tell the two ways apart: .* more by "early" to .* more by "late"/,
    );
    const four = await weigh(twelve.slice(0, 4), testsOf(6, twelve.slice(0, 4)));
    expect(four).toMatchObject({ difference_percent: null, ways: [{ telling: 2 }, { telling: 2 }] });
    expect(four.sentences).toEqual([expect.stringMatching(/^Too little to say/)]);
  });

  it('counts nothing of a lifter from the day of being taken out on, and names all who left, with their last day', async () => {
    const tests = testsOf(6);
    const drawn = twelve.map((one, i) => (i === 0 ? { ...one, takenOutOn: '2026-04-27' } : one));
    const wild = tests.map((one) =>
      one.lifterId === 'l0' && one.on >= '2026-04-27' ? { ...one, value_kg: 900 } : one,
    );
    const late = wild.filter(({ lifterId, on }) => lifterId !== 'l3' || on < '2026-04-01');
    const report = await weigh(drawn, late);
    expect(report.difference_percent!.high95).toBeLessThan(10);
    expect(report.leftEarly).toEqual([
      { lifterId: 'l0', name: 'Lifter 0', way: 'early', takenOut: true, lastOn: '2026-03-30' },
      { lifterId: 'l3', name: 'Lifter 3', way: 'late', takenOut: false, lastOn: '2026-03-30' },
    ]);
    expect(report.sentences.at(-1)).toMatch(
      /^2 lifters left before the end: Lifter 0 \("early", taken out, last counted 30 Mar 2026\); Lifter 3 \("late", last counted 30 Mar 2026\)/,
    );
  });

  it('says before its end that it is not over, and tells no more than was seen by then', async () => {
    const half = testsOf(6).filter(({ on }) => on < '2026-04-01');
    const { toldTo, difference_percent, sentences } = await weigh(twelve, half);
    expect(sentences).toContainEqual(expect.stringMatching(/^It is not over/));
    // A third of the difference is there by the second test; what comes after it is not foretold.
    expect(toldTo).toBe('2026-03-30');
    expect(sentences[0]).toContain('from 2 Mar 2026 to 30 Mar 2026');
    expect(difference_percent!.low95).toBeLessThan(2);
    expect(difference_percent!.high95).toBeGreaterThan(2);
    expect(difference_percent!.high95).toBeLessThan(4);
  });

  it('gives no range where no test scatters, and says why', async () => {
    const flat = testsOf(0).map((one) => ({ ...one, value_kg: 100 }));
    expect((await refusal(weigh(twelve, flat))).message).toMatch(/the tests do not scatter at all/);
  });

  it('refuses a way that was not drawn from, and a test of somebody who was not drawn', async () => {
    expect(await refusal(weigh([{ lifterId: 'a', way: 'other' }], []))).toMatchObject({
      field: 'drawn[0].way',
    });
    const tests = [{ lifterId: 'b', on: '2026-03-30', value_kg: 100 }];
    expect(await refusal(weigh([{ lifterId: 'a', way: 'late' }], tests))).toEqual({
      field: 'tests[0].lifterId',
      message: 'tests[0].lifterId is "b"; it must be one of those who were drawn.',
    });
  });
});
