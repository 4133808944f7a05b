import type { Untold } from './Untold.ts';

/** Where prices on what racks share bound a branch: whatever the prices, the bound holds, and the branches of a branch cover it. */
export const untoldOfPrices: readonly Untold[] = [
  {
    file: 'core/day/boundBranch.ts',
    within: 'if (isLeaf || (branch.whole && round % OFFER_EVERY === 0)) offer(plans);',
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
    file: 'core/day/boundBranch.ts',
    within: 'const ROUNDS = 60;',
    changes: ['60 -> 90'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const BRANCH_ROUNDS = 3;',
    changes: ['3 -> 4'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const OFFER_EVERY = 10;',
    changes: ['10 -> 15'],
    why: 'How often plans are offered changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const TIGHTEN_EVERY = 5;',
    changes: ['5 -> 6'],
    why: 'How often racks are told to go without changes how long the search takes; what they lose is in no better allocation.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const PATIENCE = 3;',
    changes: ['3 -> 4'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const SHORTEST_STEP = 0.02;',
    changes: ['0.02 -> 0.03'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: `let step = 1;
  let waited = 0;`,
    changes: ['1 -> 2', '0 -> 1'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'let round = 0; round < (branch',
    changes: ['0 -> 1', '< -> <='],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: '(isLeaf || (branch.whole &&',
    changes: ['|| -> &&', '&& -> ||'],
    why: 'How often plans are offered changes how soon the best is found, not which it is: those of the best bound are offered at the end.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: '% OFFER_EVERY === 0',
    changes: ['0 -> 1'],
    why: 'How often plans are offered changes how soon the best is found, not which it is.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'bound > best.bound + EPSILON',
    changes: ['> -> >=', '+ -> -'],
    why: 'Of two bounds as good to a billionth either holds.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: `waited = 0;
    }
    if (round`,
    changes: ['0 -> 1'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'round % TIGHTEN_EVERY === TIGHTEN_EVERY - 1',
    changes: ['=== -> !==', '- -> +', '1 -> 2'],
    why: 'How often racks are told to go without changes how long the search takes; what they lose is in no better allocation.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'sale.sold[rack]![item]! : 0)',
    changes: ['0 -> 1'],
    why: 'The price of what is not contested is set back to nought before it counts.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: `step /= 2;
      waited = 0;`,
    changes: ['/= -> *=', '2 -> 3', '0 -> 1'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'value + MOMENTUM * (before?.[rack]![turn]![item] ?? 0)',
    changes: ['+ -> -', '0 -> 1'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'direction.flat(2).reduce((sum, value) => sum + value * value, 0)',
    changes: ['2 -> 3', '0 -> 1'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'length === 0 ? 0 : (step * Math.min(1, Math.max(1e-4,',
    changes: ['0 -> 1', '0 -> 1', 'Math.min -> Math.max', '1 -> 2', '1e-4 -> 0.00015000000000000001'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'bound))) / length',
    changes: ['/ -> *'],
    why: 'How prices are sought changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'branch.whole || best!.bound >= least() - EPSILON ? best! : closed(best!, racks, items)',
    changes: [
      '|| -> &&',
      '>= -> >',
      '>= -> <=',
      '- -> +',
      'branch.whole || best!.bound >= least() - EPSILON ? best! : closed(best!, racks, items) -> branch.whole || best!.bound >= least() - EPSILON ? (closed(best!, racks, items)) : (best!)',
    ],
    why: 'A rotation left open makes the bound lower, never wrong: more branches are looked at.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'if (found.bound < least() - EPSILON) offer',
    changes: ['< -> <=', '- -> +'],
    why: 'Plans of no better bound are not taken where they are offered.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'least() - bound))',
    changes: ['- -> +'],
    why: 'How far prices step at a time changes how long the search takes: a bound holds at any prices.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'const EPSILON = 1e-9;',
    changes: ['1e-9 -> 1.5000000000000002e-9'],
    why: 'Costs that differ by no more than rounding are the same cost.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: 'charged > cost + paid - EPSILON',
    changes: ['> -> >=', '> -> <', '- -> +', '+ -> -'],
    why: 'A walk taken for closed, or closed once more, makes a bound lower or the same, never wrong.',
  },
  {
    file: 'core/day/boundBranch.ts',
    within: `sum + counts.reduce((part, count, item) => part + count * charges[turn]![item]!, 0),
    0,`,
    changes: ['+ -> -', '+ -> -', '* -> /', '0 -> 1', '0 -> 1'],
    why: 'A walk taken for closed, or closed once more, makes a bound lower or the same, never wrong.',
  },
];
