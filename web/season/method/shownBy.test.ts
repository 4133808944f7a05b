import { expect, test } from 'vitest';
import { judgedMethod } from '#contract/season/readMethod.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { shownBy } from './shownBy.ts';

test('the place of a fault leads to its phase, its day and its group, and the place of the whole to none', () => {
  for (const method of shippedMethods)
    for (const phase of method.phases)
      for (const [day, { groups }] of phase.days.entries())
        for (const group of groups) {
          const wrong = structuredClone(method);
          const asked = wrong.phases.find(({ id }) => id === phase.id)!.days[day]!.groups;
          asked.find(({ id }) => id === group.id)!.restWeeks = group.variants.length;
          const judged = judgedMethod(wrong);
          if (!('problems' in judged))
            throw new Error('A start cannot rest as many weeks as there are starts.');
          expect(judged.problems.map(({ place }) => shownBy(wrong, place))).toEqual([
            { phaseId: phase.id, day, groupId: group.id },
          ]);
        }
  const nowhere = { phaseId: null, day: null, groupId: null };
  expect(shownBy(shippedMethods[0]!, 'limits.mostRise')).toEqual(nowhere);
  expect(shownBy(shippedMethods[0]!, 'phases')).toEqual(nowhere);
});
