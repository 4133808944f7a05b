import { expect, test } from 'vitest';
import { nearUntil, nearWeeksSentence } from './nearUntil.ts';

// 25 November 2026 is a Wednesday; a week from it ends with the Tuesday.
const today = '2026-11-25';

test("what the club says of near weeks leads, none included; the method's counts where the club says nothing", () => {
  expect(nearUntil({ nearWeeks: 1 }, { nearWeeks: 4 }, today)).toBe('2026-12-01');
  expect(nearUntil({ nearWeeks: 0 }, { nearWeeks: 4 }, today)).toBeNull();
  expect(nearUntil({ nearWeeks: null }, { nearWeeks: 4 }, today)).toBe('2026-12-22');
  expect(nearUntil({ nearWeeks: 3 }, { nearWeeks: 0 }, today)).toBe('2026-12-15');
});

test('the season says whose number of near weeks holds', () => {
  expect(nearWeeksSentence({ nearWeeks: 3 }, { nearWeeks: 4 })).toContain(
    "3 weeks are worked out to bar and bands, as the club's settings say",
  );
  expect(nearWeeksSentence({ nearWeeks: 0 }, { nearWeeks: 4 })).toContain('No week');
  expect(nearWeeksSentence({ nearWeeks: null }, { nearWeeks: 1 })).toContain(
    '1 week is worked out to bar and bands, as the method says',
  );
  expect(nearWeeksSentence({ nearWeeks: null }, {})).toContain('as is usual');
});
