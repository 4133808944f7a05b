import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { changed, type DraftSteps, takenBack } from './draftSteps.ts';

const step = fc.record({ next: fc.integer(), goesOn: fc.boolean() });

test('every step is taken back in its turn, and what goes on in one field is one step', () => {
  fc.assert(
    fc.property(fc.integer(), fc.array(step, { maxLength: 30 }), (first, asked) => {
      // Nothing goes on before something was begun.
      const all = asked.map((one, at) => ({ ...one, goesOn: at > 0 && one.goesOn }));
      let now: DraftSteps<number> = { draft: first, past: [] };
      const atEndOfStep = [first];
      for (const { next, goesOn } of all) {
        now = changed(now, next, goesOn);
        if (goesOn) atEndOfStep.pop();
        atEndOfStep.push(next);
      }
      for (const kept of atEndOfStep.toReversed()) {
        expect(now.draft).toBe(kept);
        now = takenBack(now);
      }
      expect(now).toEqual({ draft: first, past: [] });
    }),
  );
});
