import { expect, test } from 'vitest';
import { dayPlan } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { gravityMps2, inventedPlan } from '#contract/tests/inventedPlan.ts';
import type { LineWords } from './lifterLine.ts';
import { rackSheets } from './rackSheets.ts';
import { strengthThere } from './strengthThere.ts';

const words: LineWords = {
  disc: [],
  mass: 'kg',
  length: 'cm',
  gravityMps2,
  wallStepKg: null,
  say: (caution) => `${caution.code}.`,
};
const sheet = {
  club: 'Invented',
  invented: true,
  date: 'today',
  title: '',
  note: '',
  notes: [],
  madeBy: 'Rackwright',
  changedSince: false,
  since: [],
  rackIds: ['north', 'south'],
};

test('one page a rack, lifters by turn, with the loads of the heaviest step', () => {
  expect(dayPlan.safeParse(inventedPlan()).success).toBe(true);
  const pages = rackSheets(inventedPlan(), sheet, words);
  expect(pages.map(({ rack, page, pages }) => [rack, page, pages])).toEqual([
    ['Rack north', 1, 2],
    ['Rack south', 2, 2],
  ]);
  const [short, tall] = pages[0]!.lifters;
  expect(short).toMatchObject({ name: 'Invented short', bar: '90', aSide: '2 × 25' });
  // 900 N of bar and 300 N of one pair at lockout, 600 N of two, at 10 N a kilogram; intervals 10 % of the band.
  expect(short!.lockout).toMatchObject({ load: '120', interval: '117 to 123', known: 'measured' });
  expect(tall!.lockout).toMatchObject({ load: '150', interval: '144 to 156', known: 'estimated' });
  expect(short!.effort).toEqual({
    speed: '0.62 → 0.58 m/s',
    inZone: '',
    strain: '4 s a set',
    shorterRest: 'resting 0:45, last rep 0.55 m/s, all reps 91 %',
    spare: '26 %',
    allReps: '96 %',
  });
  // 80 and 40 % of what can be held there, and no word of a share that nobody worked out.
  expect([short!.bottom.share, short!.lockout.share]).toEqual(['80 %', '40 %']);
  const bare = inventedPlan();
  for (const { explanation } of bare.groups[0]!.places[0]!.solved!.blocks) explanation.shares = [];
  const { bottom } = rackSheets(bare, sheet, words)[0]!.lifters[0]!;
  expect([bottom.share, strengthThere(bottom)]).toEqual(['', '']);
  expect(strengthThere(short!.bottom)).toBe('80 % of strength there');
  // Of alike bars the last step is the one that matters, and the picture runs from bottom to lockout.
  expect(short!.picture.map(({ zM }) => zM)).toEqual([1, 1.3, 1.6]);
  const even = inventedPlan();
  const [first, last] = even.groups[0]!.places[0]!.solved!.blocks;
  Object.assign(first!, { barKg: last!.barKg, effort: null });
  expect(rackSheets(even, sheet, words)[0]!.lifters[0]!.effort.strain).toBe('4 s a set');
  expect(short!.steps[0]).toMatchObject({ sets: 2, bar: '60', rest: 'rest 1:15' });
});

test('the note of the day is on each of its pages', () => {
  const pages = rackSheets(inventedPlan(), { ...sheet, note: 'Doors close at nine.' }, words);
  expect(pages.map(({ note }) => note)).toEqual(['Doors close at nine.', 'Doors close at nine.']);
});

test('a note for one lifter stands at that lifter alone, in that group alone', () => {
  const [{ groupId, places }] = inventedPlan().groups as [ReturnType<typeof inventedPlan>['groups'][0]];
  const { lifterId } = places[1]!;
  const notesWith = (id: string) =>
    rackSheets(
      inventedPlan(),
      { ...sheet, notes: [{ groupId: id, lifterId, note: 'Stop if the knee hurts' }] },
      words,
    ).flatMap(({ lifters }) => lifters.map(({ note }) => note));
  expect(notesWith(groupId).toSorted()).toEqual(['', '', 'Stop if the knee hurts']);
  expect(notesWith('another group')).toEqual(['', '', '']);
});

test('the title of the day is on each of its pages', () => {
  const titled = { ...sheet, title: 'Third wave, speed' };
  const pages = rackSheets(inventedPlan(), titled, words);
  expect(pages.map(({ title }) => title)).toEqual(['Third wave, speed', 'Third wave, speed']);
});

test('a rack whose lifters need two pages has them split evenly, numbered on, in lifting order', () => {
  const plan = inventedPlan();
  const [one] = plan.groups[0]!.places;
  plan.groups[0]!.places = Array.from({ length: 14 }, (_, i) => ({
    ...structuredClone(one!),
    lifterId: `l${i}`,
    turn: i + 1,
  }));
  const pages = rackSheets(plan, sheet, words, () => 2);
  expect(pages.map(({ page, pages, lifters }) => [page, pages, lifters.length])).toEqual([
    [1, 2, 7],
    [2, 2, 7],
  ]);
  expect(pages.flatMap(({ lifters }) => lifters.map(({ order }) => order))).toEqual(
    Array.from({ length: 14 }, (_, i) => i + 1),
  );
  // Only who lifts first in the day hangs anew; who begins the second page finds what the seventh left.
  expect(pages.map(({ lifters }) => lifters[0]!.changes)).toEqual(['hang 13-A first', 'same bands']);
});

const parts = (key: string) => (key === 'group north' ? 2 : 1);

test('only the rack whose lifters need more room is split, by its group and its own name, and lifters come by turn', () => {
  const plan = inventedPlan();
  plan.groups[0]!.places.reverse();
  const pages = rackSheets(plan, sheet, words, parts);
  expect(pages.map(({ key, lifters }) => [key, lifters.map(({ name }) => name)])).toEqual([
    ['group north', ['Invented short']],
    ['group north', ['Invented tall']],
    ['group south', ['Invented strong']],
  ]);
});

test('who lifts alone at a rack hears of no changes: the bands stay', () => {
  const plan = inventedPlan();
  plan.groups[0]!.places.splice(1, 1);
  expect(rackSheets(plan, sheet, words)[0]!.lifters.map(({ changes }) => changes)).toEqual(['']);
});

test('pages come in the order in which the club keeps its racks', () => {
  const turned = { ...sheet, rackIds: ['south', 'north'] };
  expect(rackSheets(inventedPlan(), turned, words).map(({ rack }) => rack)).toEqual([
    'Rack south',
    'Rack north',
  ]);
});

test('pounds are the same loads: 90 kg is 198.4 lb by the pound of 0.45359237 kg', () => {
  const [north] = rackSheets(inventedPlan(), sheet, { ...words, mass: 'lb' });
  expect(north!.unit).toBe('lb');
  expect(north!.lifters[0]!.bar).toBe('198.4');
  expect(north!.lifters[0]!.lockout.load).toBe('265');
  expect(north!.lifters[0]!.reference).toContain('440.9 lb');
});

test('lifters in rotation: the first hangs, and in later rounds changes what the last left', () => {
  const [north] = rackSheets(inventedPlan(), sheet, words);
  expect(north!.lifters.map(({ changes }) => changes)).toEqual([
    'hang 13-A first; from round 2: 22-A off',
    '22-A on',
  ]);
});

test('cautions stand where the risk is, what was taken for granted apart from them', () => {
  const [north, south] = rackSheets(inventedPlan(), sheet, words);
  expect(north!.cautions).toEqual(['bandsUnderLoad.']);
  expect(north!.assumed).toEqual(['Invented tall: heightsEstimated.']);
  // The first name will do where nobody else there has it, and only there.
  const named = inventedPlan();
  const [short, tall] = named.groups[0]!.places;
  tall!.name = 'Tall Invented';
  named.groups[0]!.places.push({ ...structuredClone(short!), lifterId: 'third', name: 'Invented third' });
  expect(rackSheets(named, sheet, words)[0]!.assumed).toEqual(['Tall: heightsEstimated.']);
  short!.solved!.cautions = [{ code: 'heightsEstimated' }];
  expect(rackSheets(named, sheet, words)[0]!.assumed).toEqual(['Invented short, Tall: heightsEstimated.']);
  short!.solved!.cautions = [{ code: 'heightsAssumed' }];
  expect(rackSheets(named, sheet, words)[0]!.assumed).toEqual([
    'Invented short: heightsAssumed.',
    'Tall: heightsEstimated.',
  ]);
  expect(south!.cautions).toEqual(['All: minor.']);
  expect(south!.lifters[0]!.hung).toEqual([]);
  expect(south!.lifters[0]!.lockout.interval).toBe('');
});

test('no load counts as measured on a rack whose bar was assumed, not even straight weight', () => {
  const plan = inventedPlan();
  const known = () =>
    rackSheets(plan, sheet, words).flatMap(({ lifters }) => lifters.map(({ lockout }) => lockout.known));
  expect(known()).toEqual(['measured', 'estimated', 'measured']);
  for (const { solved } of plan.groups[0]!.places) solved!.cautions.push({ code: 'barAssumed', massKg: 20 });
  expect(known()).toEqual(['assumed', 'assumed', 'assumed']);
  // Nor, and above all, under a pair that nobody measured.
  plan.groups[0]!.places[1]!.solved!.cautions.push({ code: 'notMeasured', pairId: '22-A' });
  expect(known()).toEqual(['assumed', 'notMeasured', 'assumed']);
});

test('a bar that nobody weighed is marked once, at the bar, and said once below', () => {
  const plan = inventedPlan();
  const known = () =>
    rackSheets(plan, sheet, words)[0]!.lifters.map((line) => [line.barKnown, line.lockout.known]);
  expect(known()).toEqual([
    ['measured', 'measured'],
    ['measured', 'estimated'],
  ]);
  for (const { solved } of plan.groups[0]!.places)
    solved!.cautions.push({ code: 'notWeighed', bar: true, discs: true });
  expect(known()).toEqual([
    ['assumed', 'measured'],
    ['assumed', 'estimated'],
  ]);
  expect(rackSheets(plan, sheet, words)[0]!.assumed).toContain('All: notWeighed.');
});

test('a box that stands on mats is told with its pieces, a box alone by its height', () => {
  const plan = inventedPlan();
  plan.groups[0]!.places[1]!.boxStack = ['Box 33', '2 × Mat 1.5'];
  const starts = rackSheets(plan, sheet, words)[0]!.lifters.map(({ start, stack }) => [start, stack]);
  expect(starts).toEqual([
    ['box 36 cm', ''],
    ['box 36 cm', 'Box 33 and 2 × Mat 1.5'],
  ]);
});

test('a group that aims at a share of the mean load reads what it got of that, too', () => {
  const plan = inventedPlan();
  const [group] = plan.groups;
  for (const { solved } of group!.places)
    for (const { explanation } of solved!.blocks)
      explanation.percentages.push({ basis: 'mean', share: 0.63, low95: 0.62, high95: 0.64 });
  const read = () => rackSheets(plan, sheet, words)[0]!.lifters[0]!.percentages;
  expect(read()).toBe('45 % bar, 75 % lockout');
  group!.aim = { by: 'percent', targets: [{ basis: 'mean', share: 0.6 }] };
  expect(read()).toBe('45 % bar, 75 % lockout, 63 % mean');
});

test('what habit would call a load stands beside it at lockout, under bands that all have a number', () => {
  const plan = inventedPlan();
  const [short, tall, straight] = plan.groups[0]!.places;
  const habits = () =>
    rackSheets(plan, { ...sheet, rackIds: ['north', 'south'] }, words).flatMap(({ lifters }) =>
      lifters.flatMap(({ bottom, lockout }) => [bottom.habit, lockout.habit]),
    );
  for (const { solved } of [short!, straight!]) for (const block of solved!.blocks) block.nominalKg = 110;
  for (const block of tall!.solved!.blocks) block.nominalKg = null;
  expect(habits()).toEqual(['', 'by habit 110 kg', '', '', '', '']);
});

const bound = (wanted: number) => ({ code: 'boundBinds', bound: 'mostBands', limit: 0.45, wanted }) as const;
const say: LineWords['say'] = (caution) =>
  caution.code === 'boundBinds' ? `${caution.bound} ${caution.wanted}.` : `${caution.code}.`;

test('a bound that holds several lifters is said once on a sheet, by the one whom it holds back furthest', () => {
  const plan = inventedPlan();
  const [shorter, taller, strong] = plan.groups[0]!.places;
  shorter!.solved!.cautions = [bound(0.5), { ...bound(0.3), bound: 'leastBar', limit: 0.4 }];
  taller!.solved!.cautions = [bound(0.6)];
  const why = { reason: 'noneFits', slack: 1, stretched: 0, tooMuchForAnchor: 0 } as const;
  strong!.solved!.cautions = [{ code: 'noBands', why }];
  const [north, south] = rackSheets(plan, sheet, { ...words, say });
  expect(north!.cautions.slice(1)).toEqual([
    'All, Invented tall most of all: mostBands 0.6.',
    'Invented short: leastBar 0.3.',
  ]);
  expect(south!.cautions).toEqual(['All: noBands.']);
});

const alike: [mild: PlanCaution, grave: PlanCaution][] = [
  [
    { code: 'maximal', peakShare: 0.9 },
    { code: 'maximal', peakShare: 0.97 },
  ],
  [
    { code: 'anchorNotRated', anchorId: 'a', pullN: 300 },
    { code: 'anchorNotRated', anchorId: 'a', pullN: 500 },
  ],
  [
    { code: 'extrapolated', pairId: 'p', stretch: 2.1 },
    { code: 'extrapolated', pairId: 'p', stretch: 2.4 },
  ],
  [
    { code: 'unlikely', chance: 0.6 },
    { code: 'unlikely', chance: 0.2 },
  ],
  [
    { code: 'strengthWide', sdLn: 0.03, chance: 0.75, belowShare: 0.005, workUp: true },
    { code: 'strengthWide', sdLn: 0.06, chance: 0.75, belowShare: 0.04, workUp: true },
  ],
  // A least bar holds back furthest whom the aim alone would give the least.
  [
    { ...bound(0.3), bound: 'leastBar', limit: 0.4 },
    { ...bound(0.1), bound: 'leastBar', limit: 0.4 },
  ],
];

test.each(alike)('of alike cautions the gravest is said, whoever has it: not %o but %o', (mild, grave) => {
  for (const cautions of [
    [mild, grave],
    [grave, mild],
  ]) {
    const plan = inventedPlan();
    cautions.forEach((caution, i) => {
      plan.groups[0]!.places[i]!.solved!.cautions = [caution];
    });
    const [north] = rackSheets(plan, sheet, { ...words, say: (caution) => JSON.stringify(caution) });
    const whose = cautions.indexOf(grave) === 0 ? 'Invented short' : 'Invented tall';
    expect(north!.cautions.slice(1)).toEqual([`All, ${whose} most of all: ${JSON.stringify(grave)}`]);
  }
});

const apart: [one: PlanCaution, other: PlanCaution][] = [
  [
    { code: 'extrapolated', pairId: 'p', stretch: 2.1 },
    { code: 'extrapolated', pairId: 'q', stretch: 2.1 },
  ],
  [
    { code: 'anchorNotRated', anchorId: 'a', pullN: 300 },
    { code: 'anchorNotRated', anchorId: 'b', pullN: 300 },
  ],
  [
    { code: 'strengthWide', sdLn: 0.05, chance: 0.75, belowShare: 0.02, workUp: true },
    { code: 'strengthWide', sdLn: 0.05, chance: 0.75, belowShare: 0.02, workUp: false },
  ],
  // What is gone by below the middle is told from half a per cent on.
  [
    { code: 'strengthWide', sdLn: 0.05, chance: 0.75, belowShare: 0.005, workUp: true },
    { code: 'strengthWide', sdLn: 0.05, chance: 0.75, belowShare: 0.0049, workUp: true },
  ],
  [
    { code: 'noBands', why: { reason: 'shared' } },
    { code: 'noBands', why: { reason: 'noWay' } },
  ],
];

test.each(apart)('cautions that differ by more than a figure are said apart: %o and %o', (...cautions) => {
  const plan = inventedPlan();
  cautions.forEach((caution, i) => {
    plan.groups[0]!.places[i]!.solved!.cautions = [caution];
  });
  const [north] = rackSheets(plan, sheet, { ...words, say: (caution) => JSON.stringify(caution) });
  const [one, other] = cautions.map((caution) => JSON.stringify(caution));
  expect(north!.cautions.slice(1)).toEqual([`Invented short: ${one}`, `Invented tall: ${other}`]);
});

test('a sheet says which bar, what speed is aimed at and what is changed each round', () => {
  const plan = inventedPlan();
  const works = () => rackSheets(plan, sheet, words).map(({ work }) => work);
  expect(works()).toEqual(['Bar 20. Pairs changed each round: 2, about 2 min.', 'Bar 20.']);
  const zone = { by: 'speed' as const, fromMps: 0.75, toMps: 0.85 };
  plan.groups[0]!.aim = zone;
  const aim = 'Aim: 0.75 to 0.85 m/s mean speed,';
  expect(works()).toEqual([
    `Bar 20. ${aim} first rep of a set. Pairs changed each round: 2, about 2 min.`,
    `Bar 20. ${aim} first rep of a set.`,
  ]);
  plan.groups[0]!.aim = { ...zone, of: 'set' };
  expect(works()[1]).toBe(`Bar 20. ${aim} all reps of a set together.`);
});

test('pairs that hang alike stand in one line, chains by their pairs, discs by their faces', () => {
  const plan = inventedPlan();
  const { set, blocks } = plan.groups[0]!.places[1]!.solved!;
  set.bands.push({ ...set.bands[0]!, label: '29-C', hookupWords: 'Choked, rear' });
  set.chains = [1, 2].map((pairs) => ({ chainPairId: `c${pairs}`, label: `C${pairs}`, pairs }));
  for (const block of blocks)
    block.perSide = [25, 10].map((kg, i) => ({ massKg: kg, faceMassKg: kg, count: 2 - i }));
  const line = () => rackSheets(plan, sheet, words)[0]!.lifters[1]!;
  expect(line().hung).toEqual([
    '13-A and 22-A, doubled round the pegs',
    '29-C, choked, rear',
    'chain C1',
    'chain C2, 2 pairs',
  ]);
  expect(line().aSide).toBe('2 × 25 + 10');
  for (const block of blocks) block.perSide = [];
  expect(line().aSide).toBe('no discs');
});
