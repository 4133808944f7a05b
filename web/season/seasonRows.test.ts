import { expect, test } from 'vitest';
import type { SeasonView } from './SeasonView.ts';
import { seasonScene } from './seasonRows.ts';

test('a season in which nothing can be planned for anybody shows the week of today', () => {
  // 2 December 2026 is a Wednesday.
  const season = { method: { phases: [] }, lifters: [], today: '2026-12-02' } as unknown as SeasonView;
  expect(seasonScene(season, null)).toEqual({
    mondays: ['2026-11-30'],
    rows: [],
    meets: [],
    todayAt: (2 + 0.5) / 7,
  });
});
