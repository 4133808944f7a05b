import { expect, test } from 'vitest';
import { seasonEntry } from './season.ts';

const entry = (classes: { meetId: string; upToKg: number | null }[]) =>
  seasonEntry.shape.safeParse({
    id: 'entry',
    seasonId: 'season',
    lifterId: 'lifter',
    meetIds: ['spring', 'summer'],
    classes,
  });

test('a class is said of a meet that the lifter trains for, and once; any number of meets may go without', () => {
  const spring = { meetId: 'spring', upToKg: 83 };
  expect(entry([]).success).toBe(true);
  expect(entry([spring, { meetId: 'summer', upToKg: null }]).success).toBe(true);
  for (const wrong of [[{ meetId: 'winter', upToKg: 83 }], [spring, { ...spring, upToKg: 93 }]])
    expect(entry(wrong).error?.issues.map(({ path, message }) => [path, message])).toEqual([
      [['classes'], 'it must name meets of this lifter alone, and each once'],
    ]);
});
