import type { Untold } from './Untold.ts';

/** Where bands pull and bars move. */
export const untoldOfMotion: readonly Untold[] = [
  {
    file: 'core/rig/bandPath.ts',
    within: '(-b + sign * Math.sqrt(discriminant))',
    changes: ['+ -> -'],
    why: 'Both signs are tried, in either order.',
  },
  {
    file: 'core/rep/ascend.ts',
    within: 'error <= 1',
    changes: ['<= -> <'],
    why: 'No error is just one to the last digit.',
  },
  {
    file: 'core/rep/ascend.ts',
    within: '(out.a - now.a) / size',
    changes: ['- -> +'],
    why: 'How steep the way to a turn is only steers how soon it is found; it is found to the same tolerance.',
  },
  {
    file: 'core/rep/ascend.ts',
    within: 'if (out.z >= stopM) {',
    changes: ['>= -> >'],
    why: 'No step ends just at a stop to the last digit.',
  },
  {
    file: 'core/rep/ascend.ts',
    within: 'const FIRST_STEP_S = 1e-2;',
    changes: ['1e-2 -> 0.015'],
    why: 'The error control finds the step from any first one.',
  },
  {
    file: 'core/rep/ascend.ts',
    within: 'const SHORTEST_TIMES = 0.2;',
    changes: ['0.2 -> 0.30000000000000004'],
    why: 'How fast steps get shorter changes their number; each is as right.',
  },
  {
    file: 'core/rep/pushForce.ts',
    within: 'lacking > 0 && tS < builtUpS',
    changes: ['> -> >='],
    why: 'Nothing is lacking then, so that nothing is taken off.',
  },
  {
    file: 'core/rep/maxBar.ts',
    within: 'repOf(heaviest, capability, 0)',
    changes: ['0 -> 1'],
    why: 'How finely the way of the bar is sampled: here only its slowest point is read.',
  },
];
