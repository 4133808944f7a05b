import { expect, test } from 'vitest';
import { judgedMethod } from '#contract/season/readMethod.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { workWords } from '#web/setup/startingPoints.ts';
import { firstAimInTurn, groupToBegin } from './groupToBegin.ts';

test('a group of any work and lift, with any aim, begins so that the method stays right beside the groups it has', () => {
  const [method] = shippedMethods;
  for (const [at, phase] of method!.phases.entries())
    for (const { value: work } of workWords)
      for (const { value: lift } of liftWords)
        for (const aim of [null, ...Object.values(firstAimInTurn)]) {
          const [day, ...others] = phase.days;
          const begun = groupToBegin(day!.groups, work, lift, 'cm');
          const groups = [...day!.groups, aim === null ? begun : { ...begun, aim }];
          const phases = method!.phases.with(at, { ...phase, days: [{ ...day!, groups }, ...others] });
          expect(judgedMethod({ ...method!, phases })).toHaveProperty('method');
          expect(begun).toMatchObject({ work, lift });
        }
});

test('two groups begun alike are told apart', () => {
  const first = groupToBegin([], 'speed', 'squat', 'cm');
  const second = groupToBegin([first], 'speed', 'squat', 'cm');
  expect(second.id).not.toBe(first.id);
  expect(second.title).not.toBe(first.title);
});
