import { expect, test } from 'vitest';
import { judgedMethod } from '#contract/season/readMethod.ts';
import { shippedMethods } from '#contract/season/shipped/shippedMethods.ts';
import { moved, withCopyAfter } from './titledList.ts';
import { withWaveWeeks } from './withWaveWeeks.ts';

test('a phase that is copied, however often, leaves a method that is right, and its copy does the same work', () => {
  for (const method of shippedMethods)
    for (const at of method.phases.keys()) {
      const once = withCopyAfter(method.phases, at, 'phase');
      const twice = withCopyAfter(once, at, 'phase');
      expect(judgedMethod({ ...method, phases: twice })).toHaveProperty('method');
      expect(once[at + 1]!.days).toEqual(method.phases[at]!.days);
      expect(once.toSpliced(at + 1, 1)).toEqual(method.phases);
    }
});

test('a phase moved later and earlier again is where it was', () => {
  const { phases } = shippedMethods[0]!;
  const later = moved(phases, 0, 1);
  expect(later.map(({ id }) => id).slice(0, 2)).toEqual([phases[1]!.id, phases[0]!.id]);
  expect(moved(later, 1, -1)).toEqual(phases);
});

test('another length of wave leaves no figure for a week that is not there, keeps those of the first weeks, and longer and back changes nothing', () => {
  const method = shippedMethods[0]!;
  for (const [at, phase] of method.phases.entries())
    for (const weeks of [1, 2, 5]) {
      const made = withWaveWeeks(phase, weeks);
      const whole = { ...made, leastWeeks: weeks, mostWeeks: weeks };
      const phases = method.phases.with(at, whole);
      expect(judgedMethod({ ...method, phases })).toHaveProperty('method');
      for (const [day, { groups }] of made.days.entries())
        for (const [place, { blocks }] of groups.entries())
          expect(blocks[0]).toEqual(phase.days[day]!.groups[place]!.blocks[0]);
      if (weeks > phase.waveWeeks && phase.waveWeeks > 1)
        expect(withWaveWeeks(made, phase.waveWeeks)).toEqual(phase);
    }
});
