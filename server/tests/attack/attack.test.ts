import { expect, test } from 'vitest';
import { newClubPath } from '#store/tests/newClubPath.ts';
import { attack } from './attack.ts';

test('whatever is killed and replaced, every acknowledged write is in the club, in a kept archive, or was undone', async () => {
  const survived = await attack({ path: newClubPath(), clients: 24, killAfter: [40, 100] });
  expect(survived).toMatchObject({ kills: 2, lost: [], odd: [], failed: [], integrity: 'ok' });
  expect(survived.acknowledged).toBeGreaterThanOrEqual(40 + 100);
  expect(survived.replacements).toBeGreaterThanOrEqual(2);
  expect(survived.snapshots).toBeGreaterThanOrEqual(1);
  // Others are answered while a replacement goes on.
  expect(survived.readMeanwhile).toBeGreaterThan(0);
});
