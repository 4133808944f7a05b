import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layPhases, type PhaseAsked } from './layPhases.ts';

const phase = (
  waveWeeks: number,
  leastWaves: number,
  moreWaves: number,
  more: Partial<PhaseAsked> = {},
): PhaseAsked => ({
  waveWeeks,
  leastWeeks: waveWeeks * leastWaves,
  mostWeeks: waveWeeks * (leastWaves + moreWaves),
  isRound: false,
  keepsBefore: 1,
  ...more,
});

const waves = phase(3, 1, 2, { isRound: true, keepsBefore: 3 });
const approach = phase(3, 1, 0, { keepsBefore: 2 });
const deload = phase(1, 1, 0, { keepsBefore: 0 });
const laid = (asked: PhaseAsked[], weeks: number) =>
  layPhases(asked, weeks).phases.map(({ phase: at, weeks: length }) => [at, length]);

describe('phases laid backwards', () => {
  it('grows by whole waves, goes through the round again, and leaves open what no wave fits in', () => {
    expect(laid([waves, approach, deload], 7)).toEqual([
      [0, 3],
      [1, 3],
      [2, 1],
    ]);
    expect(layPhases([waves, approach, deload], 9)).toMatchObject({ openWeeks: 2, cut: [] });
    expect(laid([waves, approach, deload], 13)).toEqual([
      [0, 9],
      [1, 3],
      [2, 1],
    ]);
    expect(laid([waves, approach, deload], 16)).toEqual([
      [0, 6],
      [0, 6],
      [1, 3],
      [2, 1],
    ]);
  });

  it('gives up first what keeps last, and says so', () => {
    expect(layPhases([waves, approach, deload], 5)).toMatchObject({ cut: [0], openWeeks: 0 });
    expect(laid([waves, approach, deload], 5)).toEqual([
      [0, 1],
      [1, 3],
      [2, 1],
    ]);
    expect(laid([waves, approach, deload], 2)).toEqual([
      [1, 1],
      [2, 1],
    ]);
    expect(layPhases([waves, approach, deload], 0)).toEqual({ phases: [], openWeeks: 0, cut: [0, 1, 2] });
  });

  const arbitraryPhase = fc
    .record({
      waveWeeks: fc.integer({ min: 1, max: 4 }),
      leastWaves: fc.integer({ min: 1, max: 3 }),
      moreWaves: fc.integer({ min: 0, max: 4 }),
      isRound: fc.boolean(),
      keepsBefore: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ waveWeeks, leastWaves, moreWaves, ...rest }) => phase(waveWeeks, leastWaves, moreWaves, rest));

  it('uses every week once, without a gap up to the meet, within the bounds of each phase', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryPhase, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 0, max: 110 }),
        (asked, weeks) => {
          const { phases, openWeeks, cut } = layPhases(asked, weeks);
          let next = openWeeks;
          for (const { phase: at, week, weeks: length } of phases) {
            expect(week).toBe(next);
            next += length;
            expect(length).toBeLessThanOrEqual(asked[at]!.mostWeeks);
            if (!cut.includes(at)) expect(length % asked[at]!.waveWeeks).toBe(0);
          }
          expect(next).toBe(weeks);
          // Weeks lie open only where everything has its least, and nothing is cut while they do.
          if (openWeeks > 0) expect(cut).toEqual([]);
        },
      ),
    );
  });

  it('cuts nobody who keeps before somebody that has a week', () => {
    fc.assert(
      fc.property(
        fc.array(arbitraryPhase, { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 0, max: 20 }),
        (asked, weeks) => {
          const { phases, cut } = layPhases(asked, weeks);
          for (const lacking of cut)
            for (const { phase: at } of phases.filter(({ phase: at }) => at !== lacking))
              expect(asked[at]!.keepsBefore).toBeLessThanOrEqual(asked[lacking]!.keepsBefore);
        },
      ),
    );
  });
});
