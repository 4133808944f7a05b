import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { describe, expect, it } from 'vitest';
import { type EvidenceReport, evidenceReport, type Question } from '#contract/evidence/evidenceReport.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { evidenceSentence } from '#contract/words/evidenceSentence.ts';
import { trapSentence } from '#contract/words/trapSentence.ts';
import { normalQuantile } from '#core/numeric/normal.ts';
import { clubEvidence, type ReadLog } from './clubEvidence.ts';
import { evidenceForLifter } from './evidenceForLifter.ts';

const LIFTERS = 10;
const MEETS = 6;
const CARRY_OVER = 0.7;
const PERCENT_A_CM = 2;
const voice = { massUnit: 'kg', lengthUnit: 'cm', speaksOf: null } as const;

const random = xoroshiro128plus(4);
const normal = (mean: number, sd: number) =>
  mean + sd * normalQuantile(Math.min(Math.max(uniformFloat64(random), 1e-12), 1 - 1e-12));

const club = twoLifters();
const records = {
  ...club,
  best: [],
  lifter: Array.from({ length: LIFTERS }, (_, i) => ({
    ...club.lifter[0]!,
    id: `l${i}`,
    name: `Lifter ${i}`,
  })),
  liftHeights: [],
};
const report = await clubEvidence(records, whole(trainedClub()));
const answerTo = (question: Question, of: EvidenceReport = report) =>
  of.answers.find((answer) => answer.question === question)!;
const clubLine = (question: Question) => answerTo(question).lines[0]!;

const own = (of: EvidenceReport) => answerTo('carryOver', of).lines.filter((line) => line.lifterId !== null);

describe('evidence from a made-up log', () => {
  it('finds the carry-over that the log was made with, inside its 95 % range', () => {
    const { effect, lifters, observations } = clubLine('carryOver');
    expect(effect!.low95).toBeLessThan(CARRY_OVER);
    expect(effect!.high95).toBeGreaterThan(CARRY_OVER);
    expect(effect!.low95).toBeGreaterThan(0.2);
    expect([lifters, observations]).toEqual([LIFTERS, LIFTERS * (MEETS - 1)]);
  });

  it('finds what a centimetre of box was worth', () => {
    const { effect } = clubLine('boxHeight');
    expect(effect!.low95).toBeLessThan(PERCENT_A_CM);
    expect(effect!.high95).toBeGreaterThan(PERCENT_A_CM);
    expect(effect!.value).toBeCloseTo(PERCENT_A_CM, 0);
  });

  it('gives every lifter a line of their own, and keeps to one where one is asked for', () => {
    expect(own(report).length).toBe(LIFTERS);
    expect(own(evidenceForLifter(report, 'l3')).map((line) => line.lifterId)).toEqual(['l3']);
  });

  it('says of raw and equipped, where nobody was equipped, that it is too little', () => {
    expect(clubLine('equipped').effect).toBeNull();
    expect(evidenceSentence('equipped', clubLine('equipped'), voice)).toMatch(/^Too little to say: .*\.$/);
  });

  it('is what its shape says, and every line and trap has one sentence', () => {
    expect(evidenceReport.parse(report)).toEqual(report);
    for (const { question, lines, traps } of report.answers) {
      for (const line of lines) expect(evidenceSentence(question, line, voice)).toMatch(/^[A-Z0-9].*\.$/);
      for (const trap of traps) expect(trapSentence(trap).text).toMatch(/^[A-Z0-9].*\.$/);
    }
  });
});

it('goes through a long log and never holds it: twice, from its beginning, with the same to say', async () => {
  const sets = trainedClub();
  let begun = 0;
  const log = {
    async *[Symbol.asyncIterator]() {
      begun += 1;
      yield* sets;
    },
  };
  expect(await clubEvidence(records, { sets: log, count: sets.length })).toEqual(
    await clubEvidence(records, whole(sets)),
  );
  expect(begun).toBe(2);
});

it('is of those alone whom the records have', async () => {
  const few = { ...records, lifter: records.lifter.slice(0, 4) };
  const own = trainedClub().filter(({ lifterId }) => few.lifter.some(({ id }) => id === lifterId));
  const sets = trainedClub();
  expect((await clubEvidence(few, whole(sets))).sets).toBe(own.length);
});

describe('traps', () => {
  it('a step from raw to equipped is left out and counted', async () => {
    const sets = trainedClub().map((set) =>
      set.platform && set.lifterId === 'l0' && set.doneOn > '2025'
        ? { ...set, equipment: 'single-ply' as const }
        : set,
    );
    const { lines, traps } = answerTo('carryOver', await clubEvidence(records, whole(sets)));
    expect(traps).toContainEqual({ code: 'changedEquipment', dropped: 1 });
    expect(lines[0]!.observations).toBe(LIFTERS * (MEETS - 1) - 1);
  });

  it('gains over a re-measured band are counted', async () => {
    const reading = { ...club.bandReading[0]!, id: 'new', bandPairId: 'light', takenOn: '2024-06-01' };
    const found = await clubEvidence(
      { ...records, bandReading: [...club.bandReading, reading] },
      whole(trainedClub()),
    );
    const trap = answerTo('carryOver', found).traps.find(({ code }) => code === 'gearRemeasured');
    // One step of each lifter spans the day.
    expect(trap).toMatchObject({ of: LIFTERS * (MEETS - 1) });
    expect((trap as { touched: number }).touched).toBeGreaterThan(0);
    expect((trap as { touched: number }).touched).toBeLessThanOrEqual(2 * LIFTERS);
  });

  it('whoever trained hard and never had two meets is named as left out', async () => {
    const sets = trainedClub().filter(({ platform, lifterId }) => !(platform && lifterId === 'l1'));
    expect(answerTo('carryOver', await clubEvidence(records, whole(sets))).traps).toContainEqual({
      code: 'survivorsOnly',
      leftOut: 1,
      ofThemLeft: 0,
    });
  });

  it('struck sets do not count', async () => {
    const struck = trainedClub().map((set) => ({ ...set, struckAt: '2026-01-01T00:00:00Z' }));
    expect(await clubEvidence(records, whole(struck))).toMatchObject({ from: null, sets: 0, meetLifts: 0 });
  });
});

function whole(sets: readonly LoggedSet[]): ReadLog {
  return { sets, count: sets.length };
}

/** Meets every 120 days; before each, singles off a box with bands, of changing height; gains carry over with `CARRY_OVER`. */
function trainedClub(): LoggedSet[] {
  return Array.from({ length: LIFTERS }, (_, i) => {
    const start = 150 + 10 * i;
    let [gym, platform] = [0.5 * start, start];
    return Array.from({ length: MEETS }, (__, k) => {
      const gain = k === 0 ? 0 : start * normal(0.03, 0.05);
      gym += gain;
      platform += CARRY_OVER * gain;
      const meet = Date.parse('2024-01-20') + 120 * k * 86_400_000;
      const before = (days: number) => new Date(meet - days * 86_400_000).toISOString().slice(0, 10);
      const gymSet = (days: number, heightM: number) =>
        loggedSquat(
          `${i} ${k} ${days}`,
          before(days),
          gym * Math.exp(PERCENT_A_CM * (heightM - 0.36) + normal(0, 0.01)),
          {
            lifterId: `l${i}`,
            repsInReserve: 0,
            with: {
              rackId: 'rack',
              start: { way: 'box', heightM },
              bands: [{ bandPairId: 'light', hookupId: 'doubled' }],
            },
          },
        );
      return [
        gymSet(30, 0.36),
        gymSet(23, 0.36),
        gymSet(16, 0.33 + 0.06 * (k % 2)),
        loggedSquat(`${i} ${k} meet`, before(0), platform + normal(0, 2), {
          lifterId: `l${i}`,
          platform: true,
        }),
      ];
    }).flat();
  }).flat();
}
