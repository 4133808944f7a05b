import { relative } from 'node:path';
import type { Mutant } from './mutantsOf.ts';

/** Changes of one expression that no answer can show, each written as `from -> to`. */
export interface Untold {
  file: string;
  /** Stands once in the file, and the changes lie in it. */
  within: string;
  changes: readonly string[];
  /** A sentence that the next one can doubt. */
  why: string;
}

/**
 * What was looked at and found to change no answer: only how long a search takes, what is kept for later, which of two that are alike comes
 * first, or nothing at all. A change that is tuned, or that no test happens to see, does not belong here.
 */
export const untold: readonly Untold[] = [
  {
    file: 'core/day/costTable.ts',
    within: 'const MOST_PARTS = 200;',
    changes: ['200 -> 300'],
    why: 'How many parts are remembered changes no part: a forgotten one is made anew.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'if (known !== undefined) return known;',
    changes: ['known !== undefined -> false'],
    why: 'A part that is made again is the same part.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'if (parts.size >= MOST_PARTS) parts.clear();',
    changes: ['>= -> >', '>= -> <='],
    why: 'When remembered parts are dropped changes no part: a dropped one is made anew.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'for (let set = 0; set < size; set++)',
    changes: ['< -> <='],
    why: 'One past the end is nobody’s set and is not marked.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'const changed = exact > cost[set]! + 1e-12;',
    changes: ['> -> >=', '1e-12 -> 1.5e-12'],
    why: 'Costs that differ do so by more than rounding, and none by just a billionth of a thousandth.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'if (sum < FREE)',
    changes: ['< -> <='],
    why: 'What a forbidden set takes is added to an endless cost, which stays endless.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'for (let at = 0; at < charged.length; at++)',
    changes: ['< -> <='],
    why: 'Writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/day/costTable.ts',
    within: 'new Int32Array(size + 1)',
    changes: ['1 -> 2'],
    why: 'A place more than is read.',
  },
  {
    file: 'core/day/branch.ts',
    within: '(branch.reserved[rack]![item]! > 0 ? -1e6 : 0)',
    changes: ['1e6 -> 1500000'],
    why: 'Either is more than a thousand pieces, so that the rack comes last.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'if (isLeaf || (branch.whole && round % OFFER_EVERY === 0)) offer(plans, charges);',
    changes: ['=== -> !=='],
    why: 'How often plans are offered changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'if (isLeaf || best.bound >= least() - EPSILON) break;',
    changes: ['isLeaf || best.bound >= least() - EPSILON -> false', '- -> +', '>= -> >'],
    why: 'Further rounds keep the best bound found, and the caller drops a branch that cannot be better: only time is spent.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'step < SHORTEST_STEP',
    changes: ['< -> <='],
    why: 'A round of pricing more or fewer changes how long the search takes, and no bound that it keeps is wrong.',
  },
  {
    file: 'core/day/branch.ts',
    within: 'price(item) * (excess(item) > 0 ? 2 : 1)',
    changes: ['* -> /'],
    why: 'Whichever contested piece is split first, the two branches cover all: only how long the search takes hangs on it.',
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
    file: 'core/day/timeSpent.ts',
    within: 'noClock: Clock = () => 0',
    changes: ['0 -> 1'],
    why: 'A clock counts from any moment, and this one stands.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within:
      'isClosed(plan, charges[rack]!) ? plan : (racks[rack]!.cheapest(allowed[rack]!, charges[rack]!) ?? plan)',
    changes: [
      'isClosed(plan, charges[rack]!) ? plan : (racks[rack]!.cheapest(allowed[rack]!, charges[rack]!) ?? plan) -> isClosed(plan, charges[rack]!) ? ((racks[rack]!.cheapest(allowed[rack]!, charges[rack]!) ?? plan)) : (plan)',
    ],
    why: 'A rotation left open makes the bound lower, never wrong: more branches are looked at.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'if (waited >= PATIENCE)',
    changes: ['>= -> >'],
    why: 'Steps are halved a round later: how long the search takes, and no bound that it keeps is wrong.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'known.length > MOST_KNOWN',
    changes: ['> -> >='],
    why: 'A plan that is forgotten is made anew.',
  },
  {
    file: 'core/day/gearSums.ts',
    within: '[0, 0, 0].map(() =>',
    changes: ['0 -> 1', '0 -> 1', '0 -> 1'],
    why: 'The numbers are not read: three lists are made.',
  },
  {
    file: 'core/day/rankBySpeed.ts',
    within: 'sumXY += loadN * speedMps;',
    changes: ['* -> /'],
    why: 'The guess steers which bar is tried first; the search proves its answer without it.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'for (let count = 0; count < SCORED_FIRST',
    changes: ['0 -> 1'],
    why: 'One set fewer is scored beforehand; the walk scores those that it needs.',
  },
  {
    file: 'core/day/barSpeed.ts',
    within: 'const upToLn = speedCorrection?.upToLn ?? 0;',
    changes: ['0 -> 1'],
    why: 'Without a correction the surplus that this bounds changes no speed.',
  },
  {
    file: 'core/day/allocate.ts',
    within: 'if (plans.reduce((wanted, plan) => wanted + plan.most[item]!, 0) <= capacity) return sum;',
    changes: ['<= -> >='],
    why: 'Which rack settles first changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/allocate.ts',
    within: 'most[item]! * charges[rack]!.reduce((total, charge) => total + charge[item]!, 0)',
    changes: ['0 -> 1'],
    why: 'Which rack settles first changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/allocate.ts',
    within: `    }, 0),
  );
  return [...plans.keys()].sort(`,
    changes: ['0 -> 1'],
    why: 'The same is added to what every rack pays, and only their order is used.',
  },
  {
    file: 'core/day/allocate.ts',
    within: 'return sum + most[item]! *',
    changes: ['+ -> -'],
    why: 'Which rack settles first changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'CLOSING_STEP * changeCost',
    changes: ['* -> /'],
    why: 'By how much closing prices rise changes how soon a walk ends where it began, not what it costs then.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'for (let set = 0; set < value.length; set++) {',
    changes: ['< -> <=', '0 -> 1'],
    why: 'The bare bar stands first and has nothing to take off, and beyond the last set there is no edge to walk.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'length: turns + 1',
    changes: ['1 -> 2'],
    why: 'A list more than is read.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'costs.length <= 1',
    changes: ['<= -> <'],
    why: 'One turn alone walks to its own best too.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'one.cost < least.cost',
    changes: ['< -> <='],
    why: 'Of two that promise alike either may be walked first.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'const CLOSING_STEP = 0.25;',
    changes: ['0.25 -> 0.375'],
    why: 'By how much closing prices rise changes how soon a walk ends where it began, not what it costs then.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: `set < cost.length; set++)
    if`,
    changes: ['< -> <='],
    why: 'Beyond the last set stands no cost, and nothing compares as smaller.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: `let sum = 0;
  for (const index of set.hookups)`,
    changes: ['0 -> 1'],
    why: 'The same is added to what a walk earns at its start and pays at its end.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'set < value.length; set++) value[set]!',
    changes: ['< -> <='],
    why: 'Writing one past the end of a typed array does nothing.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'set < size; set++',
    changes: ['< -> <='],
    why: 'Beyond what is used nothing is read.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'set < cost.length; set++) if (cost[set]! < cost[least]!)',
    changes: ['< -> <=', '< -> <='],
    why: 'Of two that cost alike either may be taken; beyond the last set nothing compares as smaller.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: '[end, least] = [-1,',
    changes: ['1 -> 2'],
    why: 'Any number below nought stands for none.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'let set = value.length - 1; set >= 0;',
    changes: ['- -> +', '>= -> >', '0 -> 1'],
    why: 'The bare bar stands first and has nothing to take off, and beyond the last set stand no edges.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'if (less === Number.POSITIVE_INFINITY) continue;',
    changes: ['less === Number.POSITIVE_INFINITY -> false'],
    why: 'From a set that nobody may have no other becomes cheaper; it is only looked at.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'if (more >= value[set]!) continue;',
    changes: ['>= -> >'],
    why: 'Of two ways that cost alike either may be walked.',
  },
  {
    file: 'core/day/closedWalk.ts',
    within: 'if (less >= value[below]!) continue;',
    changes: ['>= -> >'],
    why: 'Of two ways that cost alike either may be walked.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'const WORTH_REBUILDING = 0.9;',
    changes: ['0.9 -> 1.35'],
    why: 'When hopeless sets are dropped changes how long the search takes: none of them is in a better allocation.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'const SCORED_FIRST = 5;',
    changes: ['5 -> 6'],
    why: 'How many sets are scored beforehand changes how long the search takes; the walk scores those that it needs.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'const MOST_KNOWN = 100;',
    changes: ['100 -> 150'],
    why: 'A plan that is forgotten is made anew.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'free.length > 1',
    changes: ['> -> >='],
    why: 'One lifter alone hangs the same set as himself.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: '(sum, { ranking }) => sum + ranking.sets.length',
    changes: ['+ -> -'],
    why: 'When hopeless sets are dropped changes how long the search takes: none of them is in a better allocation.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'value < most ? 1 : 0',
    changes: ['< -> <='],
    why: 'When hopeless sets are dropped changes how long the search takes: none of them is in a better allocation.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'left > WORTH_REBUILDING * listed',
    changes: ['> -> >=', '* -> /', 'left > WORTH_REBUILDING * listed -> false'],
    why: 'When hopeless sets are dropped changes how long the search takes: none of them is in a better allocation.',
  },
  {
    file: 'core/day/rackPlans.ts',
    within: 'for (let item = 0; item < counts.length; item++)',
    changes: ['< -> <='],
    why: 'Beyond the last item stands no count, and nothing compares as larger.',
  },
  {
    file: 'core/day/promisingSets.ts',
    within: 'const ASK_EVERY = 64;',
    changes: ['64 -> 96'],
    why: 'How often the clock is looked at changes how late a search ends that time cuts short.',
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
    file: 'core/day/boundBranch.ts',
    within: 'least() - bound))',
    changes: ['- -> +'],
    why: 'How far prices step at a time changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: '(needed[item] ? price : 0)',
    changes: ['needed[item] ? price : 0 -> needed[item] ? (0) : (price)'],
    why: 'Which prices are set back to nought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/settle.ts',
    within: 'settled.every((plan, rack) => plan.cost > before[rack]! - 1e-9)',
    changes: ['settled.every((plan, rack) => plan.cost > before[rack]! - 1e-9) -> false'],
    why: 'Another round after one in which nobody gained changes nothing.',
  },
  {
    file: 'core/day/explain.ts',
    within: '{ ...task.capability, strengthN }, 0, task.speedCorrection',
    changes: ['0 -> 1'],
    why: 'How finely the way of the bar is sampled: here only the speeds of the whole rep are read.',
  },
  {
    file: 'core/day/rankLifters.ts',
    within: 'rankings.every(({ leftOut }) => leftOut === undefined)',
    changes: ['rankings.every(({ leftOut }) => leftOut === undefined) -> false'],
    why: 'Where nobody has to choose among the pool nobody reads it.',
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
    file: 'core/strength/modelError.ts',
    within: 'sampled(-RADIUS, ',
    changes: ['-RADIUS -> RADIUS'],
    why: 'Only the weights are kept, and they do not hang on where the lattice begins.',
  },
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
];

/** Why no answer shows this change of a source; null where it could. */
export function whyUntold(root: string, mutant: Mutant, source: string): string | null {
  const file = relative(root, mutant.file);
  return untold.find((one) => one.file === file && isOf(one, mutant, source))?.why ?? null;
}

/** Whether a change is one of those that an entry speaks of. */
export function isOf({ within, changes }: Untold, { start, end, from, to }: Mutant, source: string): boolean {
  const at = source.indexOf(within);
  return at >= 0 && at <= start && end <= at + within.length && changes.includes(`${from} -> ${to}`);
}
