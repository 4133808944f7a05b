import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { phaseAsked } from '#contract/records/method.ts';
import { freeId, freeTitle, withCopyAfter } from './titledList.ts';

const title = fc.string({ minLength: 1, maxLength: 60 }).filter((text) => text.trim() === text);

test('however often one of a list is copied, each has an id and a title of its own that a method takes', () => {
  fc.assert(
    fc.property(title, fc.array(fc.nat(), { maxLength: 15 }), (first, picks) => {
      let list = [{ id: 'phase-1', title: first }];
      for (const pick of picks) list = withCopyAfter(list, pick % list.length, 'phase');
      expect(list).toHaveLength(picks.length + 1);
      expect(new Set(list.map((one) => one.id)).size).toBe(list.length);
      expect(new Set(list.map((one) => one.title)).size).toBe(list.length);
      for (const one of list) {
        expect(phaseAsked.shape.id.safeParse(one.id).success).toBe(true);
        expect(phaseAsked.shape.title.safeParse(one.title).success).toBe(true);
      }
    }),
  );
});

test('a title that nothing has stays as it is, and a number that was left out is not given twice', () => {
  expect(freeTitle([{ title: 'Waves' }], 'Deload')).toBe('Deload');
  expect(freeTitle([{ title: 'Waves' }, { title: 'Waves 2' }], 'Waves')).toBe('Waves 3');
  // Of three the second was left out: the third is still there.
  expect(freeId([{ id: 'start-1' }, { id: 'start-3' }], 'start')).not.toBe('start-3');
});
