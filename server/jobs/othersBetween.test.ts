import { setImmediate as aTurn } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { othersBetween } from './othersBetween.ts';

test('others are answered between two works, of which none waits for the end of the one before', async () => {
  const seen: string[] = [];
  const others = (async () => {
    for (let i = 0; i < 3; i += 1) {
      await aTurn();
      seen.push('others');
    }
  })();
  const ends = await othersBetween([1, 2, 3], async (of) => {
    seen.push(`begun ${of}`);
    await others;
    return 10 * of;
  });
  expect(ends).toEqual([10, 20, 30]);
  expect(seen.filter((one) => one !== 'others')).toEqual(['begun 1', 'begun 2', 'begun 3']);
  expect(seen.slice(seen.indexOf('begun 1'), seen.indexOf('begun 3'))).toContain('others');
});

test('one that fails before all are begun with is told to who asked', async () => {
  const fails = othersBetween([1, 2, 3], async (of) => {
    if (of === 1) throw new Error('the first fails');
  });
  await expect(fails).rejects.toThrow('the first fails');
});
