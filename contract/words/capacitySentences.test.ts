import { describe, expect, test } from 'vitest';
import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import { capacitySentences } from './capacitySentences.ts';

const around = (median: number) => ({
  median,
  low80: median - 1,
  high80: median + 1,
  low95: median - 2,
  high95: median + 2,
});
/** Reps at 80 % by stretch; a number of sets where they tell too little. */
function report(
  stretches: readonly ({ reps: number } | { sets: number })[],
  change: CapacityReport['change'],
  better: number | null,
): CapacityReport {
  return {
    lifterId: 'a',
    lift: 'squat',
    stretches: stretches.map((stretch, i) => ({
      from: `2026-0${2 * i + 1}-01`,
      to: `2026-0${2 * i + 2}-28`,
      setsThatTell: 'sets' in stretch ? stretch.sets : 20,
      told:
        'sets' in stretch
          ? null
          : {
              lnTiring: around(0),
              reps: [
                { share: 0.9, belief: around(stretch.reps / 2) },
                { share: 0.8, belief: around(stretch.reps) },
              ],
            },
    })),
    better,
    change,
  };
}
const said = (given: CapacityReport) => capacitySentences(given, (date) => date.slice(5)).join(' ');

describe('the sentence of work capacity over the season', () => {
  test('names both ends and the chance of a rise, at 80 % of the maximum', () => {
    expect(said(report([{ reps: 6 }, { reps: 8.24 }], 'rose', 0.968))).toBe(
      'Work capacity has risen: from about 6.0 reps at 80 % of the maximum in the twelve weeks that ended on 02-28 to about 8.2 in those that ended on 04-28. The chance that it is better now is 97 %.',
    );
  });

  test('tells a fall by the chance that it is worse, and no chance is a certainty', () => {
    const fall = said(report([{ reps: 8 }, { reps: 6 }], 'fell', 0.001));
    expect(fall).toContain('has fallen');
    expect(fall).toContain('worse now is 99 %');
    expect(said(report([{ reps: 8 }, { reps: 6 }], 'fell', 0.08))).toContain('worse now is 92 %');
  });

  test('claims nothing where the log cannot tell, though the middles differ', () => {
    const silent = said(report([{ reps: 6 }, { reps: 7 }], 'cannotTell', 0.8));
    expect(silent).toContain('cannot tell');
    expect(silent).not.toMatch(/has risen|chance/);
  });

  test('names what was left out with how little there was', () => {
    const gaps = said(report([{ reps: 6 }, { sets: 0 }, { sets: 1 }, { reps: 7 }], 'cannotTell', 0.7));
    expect(gaps).toContain('the twelve weeks that ended on 04-28 (no set) and on 06-28 (1 set).');
    const three = said(report([{ sets: 2 }, { sets: 0 }, { sets: 1 }, { reps: 7 }], 'cannotTell', 0.7));
    expect(three).toContain('ended on 02-28 (2 sets), on 04-28 (no set) and on 06-28 (1 set).');
    expect(said(report([{ sets: 2 }, { reps: 6 }, { reps: 7 }], 'rose', 0.9))).toMatch(
      /ended on 02-28 \(2 sets\)\.$/,
    );
  });

  test('says why there is no picture, or no change', () => {
    expect(said(report([], 'cannotTell', null))).toMatch(/^No set of several reps/);
    expect(said(report([{ sets: 3 }], 'cannotTell', null))).toMatch(
      /^No twelve weeks.* would, .*written down\.$/,
    );
    for (const better of [null, 0.5])
      expect(said(report([{ sets: 3 }, { reps: 5 }], 'cannotTell', better))).toMatch(
        /takes two to see a change/,
      );
  });
});
