import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { inPages } from './inPages.ts';

test('no page is too full, none is empty, and all together are the list', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer(), { minLength: 1, maxLength: 300 }),
      fc.integer({ min: 1, max: 50 }),
      (list, most) => {
        const pages = inPages(list, most);
        expect(pages.flat()).toEqual(list);
        for (const page of pages) {
          expect(page.length).toBeGreaterThan(0);
          expect(page.length).toBeLessThanOrEqual(most);
        }
      },
    ),
  );
});
