import { basisWords } from '#contract/words/basisWords.ts';

/** A place of a method in a coach's words: "Speed waves, Thursday squats, Speed squat, bar of week 2". */
export function methodPlace(document: unknown, path: readonly PropertyKey[]): string {
  const words: string[] = [];
  let value = document;
  let field = '';
  for (const [at, step] of path.entries()) {
    const within: unknown =
      typeof value === 'object' && value !== null ? Reflect.get(value, step) : undefined;
    if (typeof step === 'number') {
      words.push(entryWord(within, field, step));
      // The steps of a week are a list in a list.
      if (Array.isArray(within)) field = 'step';
    } else {
      const list = field;
      field = String(step);
      // A list is told by its entry, unless all of it is meant.
      if (!Array.isArray(within) || at === path.length - 1) words.push(fieldWord(field, list));
    }
    value = within;
  }
  return words.join(', ');
}

/** Phases, days and groups are known by their titles; figures by the week or the wave that they stand for. */
export function entryWord(each: unknown, field: string, at: number): string {
  if (typeof each === 'object' && each !== null) {
    if ('title' in each && each.title !== '') return String(each.title);
    if ('basis' in each) return basisWords.find(({ value }) => value === each.basis)?.word ?? '';
  }
  if (perWeek.includes(field)) return `${fieldWord(field)} of week ${at + 1}`;
  return field === 'bandShares' ? `bands of wave ${at + 1}` : `${oneOf[field] ?? fieldWord(field)} ${at + 1}`;
}

/** What a field is called; some have another name in the entries of a list. */
export function fieldWord(field: string, list = ''): string {
  return words[`${list}.${field}`] ?? words[field] ?? field;
}

/** Lists with an entry for each week of the wave. */
const perWeek = ['shares', 'barShares', 'bottomShares', 'lockoutShares', 'zones', 'blocks'];

/** What an entry without a title is called. */
const oneOf: Readonly<Record<string, string>> = {
  phases: 'phase',
  days: 'day',
  groups: 'group',
  variants: 'start',
  targets: 'percentage',
  levels: 'level of strength',
  accessories: 'accessory',
  sleds: 'sled',
  holds: 'push against pins',
  places: 'height',
  sources: 'source',
};

/** What a field is called where its name is no word of the trade. */
const words: Readonly<Record<string, string>> = {
  says: 'what it does, in short',
  goal: 'what it is for',
  madeOn: 'made on',
  work: 'kind of work',
  by: 'what it goes by',
  of: 'whose speed',
  'sources.of': 'which figures',
  'sources.source': 'their source',
  weekday: 'day of the week',
  leastWeeks: 'weeks at least',
  mostWeeks: 'weeks at most',
  waveWeeks: 'weeks of a wave',
  isRound: 'gone through again',
  keepsBefore: 'order in which phases keep their weeks',
  onlyAfterMeet: 'only after a meet',
  shares: 'share',
  barShares: 'bar',
  bandShares: 'bands',
  bottomShares: 'share at the bottom',
  lockoutShares: 'share at lockout',
  zones: 'speed',
  fromMps: 'from (m/s)',
  toMps: 'to (m/s)',
  blocks: 'steps',
  restSeconds: 'rest (s)',
  shareOfAim: 'share of the aim',
  restWeeks: 'weeks before the same start comes again',
  leastChance: 'least chance of a rep',
  leastTimesBodyMass: 'from so many body masses on',
  zoneShift: 'zones of the volume table moved by',
  nearWeeks: 'weeks worked out to bar and bands',
  mostHeavyLiftsAWeek: 'heavy lifts of a week at most',
  mostRise: 'rise from week to week at most',
  mostWeeksOnOneBandShare: 'weeks on one band share at most',
  forWhom: 'for whom',
  heightM: 'height (m)',
  way: 'how it begins',
  aboveParallelM: 'above parallel (m)',
  distanceM: 'way (m)',
  massKg: 'mass (kg)',
  friction: 'held back by the floor',
};
