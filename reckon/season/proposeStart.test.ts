import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { startSentences } from '#contract/season/startSentences.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { proposeStart, type StartSought } from './proposeStart.ts';

const records = twoLifters();
/** The tall lifter's squat goes from 0.98 to 1.60 m. */
const box = (heightM: number) => ({
  id: `box-${heightM}`,
  title: `off a box of ${heightM} m`,
  start: { way: 'box' as const, heightM },
});
const pins = (heightM: number) => ({
  id: `pins-${heightM}`,
  title: `from pins at ${heightM} m`,
  start: { way: 'pins' as const, heightM },
});
const variants = [box(0.3), box(0.4), pins(1.2), pins(1.4)];
const asked: StartSought = {
  lifterId: 'tall',
  date: '2026-06-01',
  group: { lift: 'squat', work: 'repeated', variants, restWeeks: 2 },
  hasBands: false,
  planned: [],
  ownBoxes: [],
};
const nothing = { sets: [], bests: [], evidence: [] };
const setOf = (at: number, doneOn: string, stoppedAtS: number | null = null) =>
  ({
    lifterId: 'tall',
    lift: 'squat',
    doneOn,
    struckAt: null,
    reps: 1,
    made: stoppedAtS === null ? 1 : 0,
    stoppedAtS,
    setup: { rackId: null, start: variants[at]!.start, barKg: 150, bands: [], chains: [] },
  }) as unknown as LoggedSet;
const lineOf = (way: 'box' | 'pins', lifterId: string | null, value: number, low80: number) =>
  ({
    lifterId,
    variant: { lift: 'squat', way, hung: 'straight' },
    effect: { value, low80, high80: 2 * value, low95: -1, high95: 3 },
  }) as unknown as EvidenceLine;

const day = (weeks: number) =>
  new Date(Date.parse(asked.date) + 7 * weeks * 86_400_000).toISOString().slice(0, 10);

test('what was done longest ago is due, the first of the list among those never done', () => {
  const sets = [setOf(0, '2026-04-20'), setOf(1, '2026-03-02'), setOf(2, '2026-04-06')];
  const proposal = proposeStart(records, asked, { ...nothing, sets });
  expect(proposal.proposed).toMatchObject({
    variant: variants[3],
    reasons: [{ code: 'due', lastDoneOn: null }],
  });
  const all = proposeStart(records, asked, { ...nothing, sets: [...sets, setOf(3, '2026-05-04')] });
  expect(all.proposed!.variant).toBe(variants[1]);
  expect(startSentences(all, asked.date)).toEqual([
    'Proposed for this lifter: off a box of 0.4 m.',
    'It is due: of the starts that have rested, it was done longest ago, 91 days before, on Mon 2 Mar.',
  ]);
});

test('misses and the platform together outvote what is due; a miss alone, or an answer that may be nought, says nothing', () => {
  // At 0.45 of 0.98 to 1.60 m the bar stands at 1.26 m: pins at 1.20 m begin just below, those at 1.40 m above.
  const misses = [setOf(0, '2026-05-01', 0.4), setOf(0, '2026-05-04', 0.5)];
  const evidence = [lineOf('pins', null, 0.9, 0.2), lineOf('box', 'tall', 0.8, -0.1)];
  const told = proposeStart(records, asked, { ...nothing, sets: misses, evidence });
  expect(told.proposed).toMatchObject({
    variant: variants[2],
    reasons: [
      { code: 'carriedOver', value: 0.9, whose: 'club' },
      { code: 'misses', count: 2, atS: 0.45 },
    ],
  });
  expect(startSentences(told, asked.date)[2]).toMatch(/the last 2 misses stopped, 45 % of the way up\./);
  const one = proposeStart(records, asked, {
    ...nothing,
    sets: misses.slice(1),
    evidence: evidence.slice(1),
  });
  expect(one.proposed!.reasons).toEqual([{ code: 'due', lastDoneOn: null }]);
  // The lifter's own meets go before the club's.
  const own = proposeStart(records, asked, {
    ...nothing,
    evidence: [...evidence, lineOf('pins', 'tall', 0.5, 0.1)],
  });
  expect(own.starts[2]!.carriedOver).toMatchObject({ value: 0.5, whose: 'lifter' });
});

test('nothing is proposed that has not rested, by plan or log, whatever speaks for it; where all rest, nothing is', () => {
  const use = fc.record({ at: fc.integer({ min: 0, max: 3 }), weeks: fc.integer({ min: -8, max: 8 }) });
  fc.assert(
    fc.property(
      fc.array(use),
      fc.array(use),
      fc.integer({ min: 0, max: 3 }),
      (planned, logged, restWeeks) => {
        const past = logged.filter(({ weeks }) => weeks < 0);
        const proposal = proposeStart(
          records,
          {
            ...asked,
            group: { ...asked.group, restWeeks },
            planned: planned.map(({ at, weeks }) => ({ date: day(weeks), start: variants[at]!.start })),
          },
          {
            bests: [],
            evidence: [lineOf('pins', null, 0.9, 0.2)],
            sets: past.map(({ at, weeks }) => setOf(at, day(weeks), 0.5)),
          },
        );
        const rests = variants.filter((_, at) =>
          [...planned, ...past].some((one) => one.at === at && Math.abs(one.weeks) <= restWeeks),
        );
        if (proposal.proposed === null) expect(rests).toHaveLength(4);
        else expect(rests).not.toContain(proposal.proposed.variant);
      },
    ),
  );
});
