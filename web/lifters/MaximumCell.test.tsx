import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { StrengthSummary } from '#contract/strength/strengthSummary.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { EstimateProgress } from './EstimateProgress.tsx';
import { MaximumCell } from './MaximumCell.tsx';

const best = smallClub().best[0]!;
const estimate: StrengthSummary = {
  lifterId: best.lifterId,
  lift: 'squat',
  on: '2026-11-25',
  setCount: 40,
  lastSetOn: '2026-11-20',
  maxKg: { median: 100, low80: 95, high80: 106, low95: 91, high95: 110 },
  upToDate: true,
};
const textOf = (cell: React.ReactNode) =>
  renderToStaticMarkup(cell)
    .replaceAll(/<[^>]*>/g, ' ')
    .trim();

test('a maximum by the log stands with its 80 % range and its mark, in the unit that is read', () => {
  expect(textOf(<MaximumCell estimate={estimate} best={best} unit="kg" />)).toMatch(
    /^100 +est\. +95 to 106$/,
  );
  // NIST SP 811: 1 lb = 0.45359237 kg, so 100, 95 and 106 kg are 220.46, 209.44 and 233.69 lb.
  expect(textOf(<MaximumCell estimate={estimate} best={best} unit="lb" />)).toMatch(
    /^220 +est\. +209 to 234$/,
  );
});

test('until it is there, the best stands without a mark, and a dash where there is none', () => {
  expect(textOf(<MaximumCell estimate={undefined} best={best} unit="kg" />)).toBe('140.0');
  expect(textOf(<MaximumCell estimate={undefined} best={null} unit="kg" />)).toBe('–');
});

test('a run over the club is told, one lift after a logged set is not', () => {
  expect(bar(120, true)).toContain('1 of 120');
  expect(bar(1, true)).toBe('');
  expect(bar(120, false)).toBe('');
});

function bar(total: number, running: boolean) {
  return textOf(<EstimateProgress progress={{ done: 1, total, running }} />);
}
