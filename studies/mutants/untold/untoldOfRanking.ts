import type { Untold } from './Untold.ts';

/** Where bars are loaded and sets are ranked and listed. */
export const untoldOfRanking: readonly Untold[] = [
  {
    file: 'core/day/barSpeed.ts',
    within: 'const upToLn = speedCorrection?.upToLn ?? 0;',
    changes: ['0 -> 1'],
    why: 'Without a correction the surplus that this bounds changes no speed.',
  },
  {
    file: 'core/day/explain.ts',
    within: '{ ...task.capability, strengthN }, 0, task.speedCorrection',
    changes: ['0 -> 1'],
    why: 'How finely the way of the bar is sampled: here only the speeds of the whole rep are read.',
  },
  {
    file: 'core/day/gearSums.ts',
    within: '[0, 0, 0].map(() =>',
    changes: ['0 -> 1', '0 -> 1', '0 -> 1'],
    why: 'The numbers are not read: three lists are made.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'window.at(-1)!.rank >= count - at',
    changes: ['>= -> >'],
    why: 'Of two equal ranks either gives the same count, and the later one stays when the earlier leaves the window.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'Math.floor(rest / step)',
    changes: ['/ -> *'],
    why: 'The count goes down from any start that is high enough, and places that do not exist never match.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'kinds.at(-1)?.grams ?? 0',
    changes: ['0 -> 1'],
    why: 'Without discs the table has a place more, which none reaches.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'Math.max(0, Math.ceil(sideUnits)',
    changes: ['0 -> 1'],
    why: 'For a target far below the bar the table has a place more, and the bare bar before it is taken.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'units > sideUnits',
    changes: ['> -> >='],
    why: 'A target that can be loaded as it is is the nearest from both sides.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'missKg(heavier) < missKg(lighter!) - TIE_KG',
    changes: ['< -> <='],
    why: 'No two loads differ by just a milligram to the last digit.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'sum + (kind.grams / unitG) * kind.pairs, 0)',
    changes: ['/ -> *', '0 -> 1'],
    why: 'A table longer than all discs together has places that none reaches.',
  },
  {
    file: 'core/day/plates.ts',
    within: `pairs > 0)
`,
    changes: ['> -> >='],
    why: 'A kind without a pair is never loaded.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'grams > 0 &&',
    changes: ['0 -> 1'],
    why: 'No disc weighs a gram.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'b === 0 ? a : divisor(b, a % b)',
    changes: ['=== -> !==', 'b === 0 ? a : divisor(b, a % b) -> b === 0 ? (divisor(b, a % b)) : (a)'],
    why: 'A finer unit makes the table longer; what can be loaded stays the same.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'divisor(kind.grams, unit), 0) || 1',
    changes: ['0 -> 1', '1 -> 2'],
    why: 'A finer unit makes the table longer, and without discs none is counted in: what can be loaded stays the same.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'const bare = new Uint16Array(limit + 1)',
    changes: ['1 -> 2'],
    why: 'A place more than is read.',
  },
  {
    file: 'core/day/plates.ts',
    within: `= 0;
  const table`,
    changes: ['0 -> 1'],
    why: 'A disc more is counted for every load alike.',
  },
  {
    file: 'core/day/plates.ts',
    within: 'let at = 0, units = residue; units < before.length',
    changes: ['0 -> 1', '< -> <='],
    why: 'Steps may be counted from any number, and writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/day/plates.ts',
    within: `if (count < UNREACHED) {
      while`,
    changes: ['< -> <='],
    why: 'What nothing reaches stays above every count.',
  },
  {
    file: 'core/day/promisingSets.ts',
    within: 'const ASK_EVERY = 64;',
    changes: ['64 -> 96'],
    why: 'How often the clock is looked at changes how late a search ends that time cuts short.',
  },
  {
    file: 'core/day/promisingSets.ts',
    within: 'looked % ASK_EVERY === 0',
    changes: ['=== -> !==', '0 -> 1'],
    why: 'How often the clock is looked at changes how late a search ends that time cuts short.',
  },
  {
    file: 'core/day/promisingSets.ts',
    within: 'a.steps[0]! - b.steps[0]!',
    changes: ['0 -> 1', '- -> +', '0 -> 1'],
    why: 'In whatever order pieces are hung each set comes up once, with the same bound; how many wait at a time hangs on it.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: 'sumXY += loadN * speedMps;',
    changes: ['* -> /'],
    why: 'The guess steers which bar is tried first; the search proves its answer without it.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: 'if (lighter > heavier) low',
    changes: ['> -> >='],
    why: 'Which bar is tried first changes how many are; the search proves its answer without it.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: `0, 0];
  return {
    learn`,
    changes: ['0 -> 1', '0 -> 1'],
    why: 'One more in sums of squared newtons steers which bar is tried first; the search proves its answer without it.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: 'if (spreadX <= 0) return null;',
    changes: ['<= -> <', '0 -> 1'],
    why: 'Without two loads there is no line: a guess of none or of nothing steers alike, and the search proves its answer without it.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: 'correction.perSurplusMps >= 0',
    changes: ['>= -> >'],
    why: 'Where surplus counts for nothing either end of it gives the same speed.',
  },
  {
    file: 'core/day/rankLifters.ts',
    within: 'rankings.every(({ leftOut }) => leftOut === undefined)',
    changes: ['rankings.every(({ leftOut }) => leftOut === undefined) -> false'],
    why: 'Where nobody has to choose among the pool nobody reads it.',
  },
  {
    file: 'core/day/timeSpent.ts',
    within: 'noClock: Clock = () => 0',
    changes: ['0 -> 1'],
    why: 'A clock counts from any moment, and this one stands.',
  },
  {
    file: 'core/day/anotherProposal.ts',
    within: 'meanSquare(apart) > feltSquare(',
    changes: ['> -> >='],
    why: 'No difference is just what can be felt, to the last digit.',
  },
  {
    file: 'core/day/gearSums.ts',
    within: 'for (let i = 0; i < size; i++)',
    changes: ['< -> <='],
    why: 'Writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/day/rankByRows.ts',
    within: 'ascendingKg[middle]! < targetKg',
    changes: ['< -> <='],
    why: 'A mass that is just the one looked for is the nearest from both sides.',
  },
  {
    file: 'core/day/misfitPlanes.ts',
    within: 'const ROUNDS = 300;',
    changes: ['300 -> 450'],
    why: 'A plane holds whatever point it touches at; more rounds only bring it nearer.',
  },
];
