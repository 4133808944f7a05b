import type { Untold } from './Untold.ts';

/** Where strength is estimated and carried to a meet. */
export const untoldOfStrength: readonly Untold[] = [
  {
    file: 'core/strength/kalmanPass.ts',
    within: 'if (Math.abs(z) > Math.abs(effect.surprise)) effect.surprise = z;',
    changes: ['> -> >='],
    why: 'No two surprises are equal to the last digit.',
  },
  {
    file: 'core/strength/kalmanPass.ts',
    within: 'surprise < FALL_ASKED)',
    changes: ['< -> <='],
    why: 'No surprise is just two standard deviations to the last digit.',
  },
  {
    file: 'core/strength/kalmanPass.ts',
    within: 'for (let j = 0; j < n; j++) covariance[j]! += trained',
    changes: ['< -> <='],
    why: 'One further is what strength and the form of a day have in common, which the next session sets to nought.',
  },
  {
    file: 'core/strength/kalmanPass.ts',
    within: 'for (let i = 0; i < n; i++) covariance[i * n]! += trained',
    changes: ['< -> <='],
    why: 'Writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/strength/modelError.ts',
    within: 'sampled(-RADIUS, ',
    changes: ['-RADIUS -> RADIUS'],
    why: 'Only the weights are kept, and they do not hang on where the lattice begins.',
  },
  {
    file: 'core/strength/readTable.ts',
    within: 'let rep = from + ABREAST - 1; rep > 0',
    changes: ['- -> +'],
    why: 'For a rep beyond the last rung no rung is climbed.',
  },
  {
    file: 'core/strength/readTable.ts',
    within: 'Math.floor(after / ROOT_STEP)',
    changes: ['/ -> *'],
    why: 'The search for the cell goes up from any start that is low enough.',
  },
  {
    file: 'core/strength/readTable.ts',
    within: 'while (j < ROOTS - 1 && ',
    changes: ['- -> +', '< -> <='],
    why: 'Beyond the last cell stands no loss, and nothing compares as smaller than it.',
  },
  {
    file: 'core/strength/readTable.ts',
    within: 'lossLn[j + 1]! < left',
    changes: ['< -> <='],
    why: 'Where two cells meet both give the same root.',
  },
  {
    file: 'core/strength/readTable.ts',
    within: 'i < ABREAST; i++)',
    changes: ['< -> <='],
    why: 'Writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/strength/straightTotals.ts',
    within: 'let i = 0; i < 30; i++',
    changes: ['30 -> 45'],
    why: 'Thirty halvings find it to a billionth already.',
  },
  {
    file: 'core/projection/lnBelow.ts',
    within: 'const HALVINGS = 34;',
    changes: ['34 -> 51'],
    why: 'Thirty-four halvings find it to a billionth already.',
  },
  {
    file: 'core/projection/lnBelow.ts',
    within: 'let i = 0; i < HALVINGS; i++',
    changes: ['0 -> 1', '< -> <='],
    why: 'One halving less or more finds it as well.',
  },
  {
    file: 'core/projection/chanceScore.ts',
    within: 'const EDGES = [0, 0.3, 0.6, 0.8, 0.9, 1];',
    changes: ['0.3 -> 0.44999999999999996'],
    why: 'Which chances are counted together is a choice.',
  },
  {
    file: 'core/projection/censoredScore.ts',
    within: 'high - low < 1e-12',
    changes: ['1e-12 -> 1.5e-12'],
    why: 'Far less than any bounds lie apart that are not the same.',
  },
  {
    file: 'core/projection/lnBelow.ts',
    within: '1 - chanceOfLn(middle) < probability',
    changes: ['< -> <='],
    why: 'No middle has just the wanted chance to the last digit, and either half would do.',
  },
  {
    file: 'core/projection/censoredScore.ts',
    within: 'high - low < 1e-12',
    changes: ['< -> <='],
    why: 'No two bounds lie just so far apart to the last digit.',
  },
  {
    file: 'core/projection/maximumAhead.ts',
    within: 'const FAR_SD = 8;',
    changes: ['8 -> 9'],
    why: 'Less than a billionth of a billionth lies beyond eight standard deviations already.',
  },
  {
    file: 'core/projection/maximumAhead.ts',
    within: 'sdLn === 0',
    changes: ['0 -> 1'],
    why: 'A distance over no spread at all is infinite, which is as sure.',
  },
  {
    file: 'core/projection/maximumAhead.ts',
    within: 'spareLn >= 0',
    changes: ['>= -> >'],
    why: 'The halving ends beside an answer whichever side of it the answer itself is on.',
  },
  {
    file: 'core/projection/meetDay.ts',
    within: 'const FAR_LN = 1;',
    changes: ['1 -> 2'],
    why: 'Wider bounds cost two halvings of thirty-four.',
  },
];
