import { expect, test } from 'vitest';
import { approachesOf } from '#reckon/season/approaches.ts';
import { millraceLog } from './history/millraceLog.ts';
import { millraceClub } from './millraceClub.ts';

const TODAY = '2026-11-25';
const isOwn = ({ lifterId }: { lifterId: string }) => lifterId === 'lifter-kwabena';

test('an approach under way in the invented club has an earlier one by the same setup, which a meet has followed', () => {
  const club = millraceClub(TODAY);
  const sets = millraceLog(club, TODAY).filter(isOwn);
  const [first] = approachesOf(club, sets, club.best.filter(isOwn), { lift: 'squat', today: TODAY });
  expect(first!.cases).toHaveLength(1);
  expect(first!.cases[0]!.meet.barKg).toBe(232.5);
  expect(first!.now).not.toBeNull();
  // From memory, no source: what a meet brings lies within 5 % of the straight best of the last months.
  expect(first!.foretold!.value / 237.5).toBeGreaterThan(0.95);
  expect(first!.foretold!.value / 237.5).toBeLessThan(1.05);
});
