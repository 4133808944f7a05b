import { expect, it } from 'vitest';
import type { LifterSeason } from './SeasonView.ts';
import { weekNotThere } from './weekNotThere.ts';

const ada = {
  lifter: { id: 'ada', name: 'Ada' },
  plan: { weeks: [{ monday: '2026-12-07' }, { monday: '2026-12-14' }] },
} as unknown as LifterSeason;
const said = (lifterId: string | null, monday: string | null) => weekNotThere({ lifterId, monday }, [ada]);

it('is silent of a week that is there, and where the address names none', () => {
  expect(said('ada', '2026-12-14')).toBeNull();
  expect(said(null, null)).toBeNull();
});

it('says what of the address is not in the season, and which weeks there are', () => {
  for (const wrong of ['2026-12-09', '2031-01-06', 'abc', ''])
    expect(said('ada', wrong)).toBe(
      `Ada has no week "${wrong}" in this season: its weeks begin on Mondays, from 7 Dec 2026 to 14 Dec 2026.`,
    );
  expect(said('nobody', '2026-12-07')).toMatch(/lifter who is not in this season/);
  expect(said('ada', null)).toMatch(/no week/);
  expect(said(null, '2026-12-07')).toMatch(/no lifter/);
});
