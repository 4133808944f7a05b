import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { GroupAsked, Variant } from '#contract/records/method.ts';
import { rotation } from './rotation.ts';

const variants: Variant[] = [0, 1, 2, 3, 4, 5].map((at) => ({
  id: `box-${at}`,
  title: `off box ${at}`,
  start: { way: 'box', heightM: 0.3 + 0.02 * at },
}));
const groupOf = (count: number, restWeeks: number) =>
  ({ id: 'heavy', variants: variants.slice(0, count), restWeeks }) as unknown as GroupAsked;

/** How many starts, of how many weeks of rest, and in some of twenty weeks one that the coach chose. */
const season = fc.integer({ min: 1, max: 6 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    restWeeks: fc.integer({ min: 0, max: count - 1 }),
    chosen: fc.array(fc.option(fc.integer({ min: 0, max: count - 1 }), { freq: 4 }), {
      minLength: 20,
      maxLength: 20,
    }),
  }),
);

function walked({ count, restWeeks, chosen }: typeof season extends fc.Arbitrary<infer T> ? T : never) {
  const group = groupOf(count, restWeeks);
  const ahead = chosen.flatMap((at, week) =>
    at === null ? [] : [{ askedId: 'heavy', week, start: variants[at]!.start }],
  );
  const next = rotation(ahead);
  return chosen.map((at, week) =>
    variants.indexOf(next(group, week, at === null ? null : variants[at]!.start)),
  );
}

test('what the coach chose stands, and no start that is proposed breaks its rest, before or after, while any start keeps it', () => {
  fc.assert(
    fc.property(season, (drawn) => {
      const taken = walked(drawn);
      const { count, restWeeks, chosen } = drawn;
      taken.forEach((one, week) => {
        if (chosen[week] !== null) {
          expect(one).toBe(chosen[week]);
          return;
        }
        const keepsRest = (at: number) =>
          taken.every((other, then) => {
            const isKnown = then < week || chosen[then] !== null;
            return !isKnown || then === week || other !== at || Math.abs(then - week) > restWeeks;
          });
        const open = Array.from({ length: count }, (_, at) => at).filter(keepsRest);
        if (open.length > 0) expect(open).toContain(one);
      });
    }),
  );
});

test('without a choice of the coach every start comes round once before any comes again', () => {
  const next = rotation();
  const group = groupOf(4, 3);
  const taken = Array.from({ length: 12 }, (_, week) => next(group, week, null).id);
  for (const from of [0, 4, 8]) expect(new Set(taken.slice(from, from + 4)).size).toBe(4);
});
