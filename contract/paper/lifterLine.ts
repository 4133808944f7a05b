import type { PlanBlock, PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { PlanWords } from '#contract/day/planWords.ts';
import { pointsWords } from '#contract/day/raisedAim.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import { equipmentWord, startText } from '#contract/words/liftWords.ts';
import { percent } from '#contract/words/percent.ts';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import { fromSi } from '#core/units/units.ts';
import { bandChanges, firstHanging } from './bandChanges.ts';
import { effortWords, restText } from './effortWords.ts';
import type { LifterLine, WrittenLoad } from './RackSheetModel.ts';
import { referenceWords } from './referenceWords.ts';
import { trueBarWords, writtenBar } from './wallBar.ts';

/** What lines are written with: the words that the plan keeps, and the units of the view. */
export interface LineWords {
  disc: PlanWords['discs'];
  mass: MassUnit;
  length: LengthUnit;
  gravityMps2: number;
  /** The club's step for bars on the wall; null: as they weigh. */
  wallStepKg: number | null;
  say: (caution: PlanCaution) => string;
}

type Solved = NonNullable<PlanPlace['solved']>;
type Force = PlanBlock['explanation']['bottom'];

/** One lifter's bar in words and figures, for screen and paper; null where nothing could be worked out. */
export function lifterLine(
  place: PlanPlace,
  { lift, aim }: Pick<PlanGroup, 'lift' | 'aim'>,
  /** Who lifts before in the rotation, null for somebody alone; nobody has lifted yet when the first one begins. */
  before: { place: PlanPlace | null; isFirst: boolean },
  words: LineWords,
): LifterLine | null {
  const { solved } = place;
  if (solved === null) return null;
  const main = mainBlock(solved);
  const { explanation } = main;
  const { shares } = explanation;
  const bar = writtenBar(main, words.wallStepKg, words.mass);
  const known = loadKnown(solved);
  const load = (force: Force, share: number | undefined, habit = ''): WrittenLoad => ({
    load: kilos(force.totalN, words),
    known,
    interval:
      force.high95N === force.low95N ? '' : `${kilos(force.low95N, words)} to ${kilos(force.high95N, words)}`,
    share: share === undefined ? '' : percent(share),
    habit,
  });
  const said = cautionsOf(solved).map((caution) => ({ caution, sentence: words.say(caution) }));
  return {
    lifterId: place.lifterId,
    order: place.turn,
    name: place.name,
    start: startText(lift, place.start, words.length),
    stack: place.boxStack.length > 1 ? place.boxStack.join(' and ') : '',
    bar: bar.bar,
    trueBar: trueBarWords(bar, barKnown(solved), words.mass),
    barByCoach: solved.byCoach.bar,
    barKnown: barKnown(solved),
    perSide: main.perSide.map(({ faceMassKg, count }) => ({
      faceMassKg,
      count,
      ...sizeOf(words.disc, faceMassKg),
    })),
    aSide: aSide(main),
    hung: hungWords(solved.set),
    changes: changesText(before, solved),
    steps: solved.blocks.map((block) => ({
      sets: block.sets,
      reps: block.reps,
      ...writtenBar(block, words.wallStepKg, words.mass),
      aSide: aSide(block),
      rest: `rest ${restText(block.restSeconds)}`,
      effort: effortWords(block),
    })),
    bottom: load(explanation.bottom, shares[0]?.share),
    lockout: load(explanation.lockout, shares[shares.length - 1]?.share, habitText(solved, words.mass)),
    percentages: percentagesText(explanation, aim, place.moreShare),
    reference: referenceText(solved, words),
    effort: effortWords(main),
    picture: [
      { zM: solved.heights.bottomM, ...explanation.bottom },
      { zM: (solved.heights.bottomM + solved.heights.lockoutM) / 2, ...explanation.mid },
      { zM: solved.heights.lockoutM, ...explanation.lockout },
    ],
    assumed: said.filter(({ caution }) => isAssumption(caution)),
    cautions: said.filter(({ caution }) => !isAssumption(caution) && caution.code !== 'bandsUnderLoad'),
  };
}

/** The first one finds nothing on the bar; from the second round on, what the last one left. */
function changesText(
  { place, isFirst }: { place: PlanPlace | null; isFirst: boolean },
  { set }: Solved,
): string {
  if (!place?.solved) return '';
  const changes = bandChanges(place.solved.set, set);
  return isFirst ? firstHanging(set, changes) : changes;
}

/** The step that matters: the heaviest, of those alike the last. */
export function mainBlock(solved: Solved): PlanBlock {
  return solved.blocks.reduce((main, block) => (block.barKg >= main.barKg ? block : main));
}

/** What was taken to be so, instead of measured; everything else is a caution. */
export function isAssumption({ code }: PlanCaution): boolean {
  return assumptions.has(code);
}

const assumptions: ReadonlySet<PlanCaution['code']> = new Set([
  'notMeasured',
  'oneSideMeasured',
  'heightsEstimated',
  'heightsAssumed',
  'strengthAssumed',
  'strengthOld',
  'bodyMassAssumed',
  'otherEquipment',
  'gravityAssumed',
  'barAssumed',
  'notWeighed',
] as const);

/** Cautions of the main step and of the lifter, each once. */
function cautionsOf(solved: Solved): PlanCaution[] {
  const all = [...solved.cautions, ...mainBlock(solved).explanation.cautions];
  return all.filter(
    (one, i) => all.findIndex((other) => JSON.stringify(other) === JSON.stringify(one)) === i,
  );
}

/** Measured where a scale has seen the bar and all discs of it; marked at the bar, and once. */
export function barKnown(solved: Solved): KnownHow {
  return isSaid(solved, 'barAssumed') || isSaid(solved, 'notWeighed') ? 'assumed' : 'measured';
}

/** A load is known no better than the bar of its rack, the heights it was worked out at and the bands that pull; beside what iron weighs. */
export function loadKnown(solved: Solved): KnownHow {
  if (isSaid(solved, 'notMeasured')) return 'notMeasured';
  if (isSaid(solved, 'barAssumed')) return 'assumed';
  return solved.set.bands.length + solved.set.chains.length === 0 ? 'measured' : solved.heights.known;
}

function isSaid(solved: Solved, wanted: PlanCaution['code']): boolean {
  return cautionsOf(solved).some(({ code }) => code === wanted);
}

/** What trade habit would call the load at lockout; empty where no bands hang, or one that has no number. */
function habitText(solved: Solved, mass: MassUnit): string {
  const { nominalKg } = mainBlock(solved);
  return solved.set.bands.length === 0 || nominalKg === null
    ? ''
    : `by habit ${barText(nominalKg, mass)} ${mass}`;
}

function kilos(forceN: number, { mass, gravityMps2 }: LineWords): string {
  return String(Math.round(fromSi(forceN / gravityMps2, mass)));
}

/** Bar, collars and discs to a tenth: weighed discs give odd hundredths that nobody loads by. */
export function barText(barKg: number, mass: MassUnit): string {
  return String(Number(fromSi(barKg, mass).toFixed(1)));
}

/** What stands for the discs of an empty bar. */
export const noDiscs = 'no discs';

/** Discs of one side from the inside out, by the figures on their faces: "2 × 25 + 10". */
function aSide({ perSide }: PlanBlock): string {
  if (perSide.length === 0) return noDiscs;
  const kinds = perSide.map(({ faceMassKg, count }) =>
    count === 1 ? `${faceMassKg}` : `${count} × ${faceMassKg}`,
  );
  return kinds.join(' + ');
}

function sizeOf(discs: LineWords['disc'], faceMassKg: number) {
  const disc = discs.find((candidate) => candidate.faceMassKg === faceMassKg);
  return { diameterM: disc?.diameterM ?? null, thicknessM: disc?.thicknessM ?? null };
}

/** Pairs that hang alike stand in one line: "22-A and 29-B, doubled, low". */
export function hungWords({ bands, chains }: Solved['set']): string[] {
  const ways = [...new Set(bands.map((band) => band.hookupWords))];
  const hung = ways.map((way) => {
    const labels = bands.filter((band) => band.hookupWords === way).map((band) => band.label);
    return `${labels.join(' and ')}, ${way.toLowerCase()}`;
  });
  return [
    ...hung,
    ...chains.map(({ label, pairs }) => `chain ${label}${pairs === 1 ? '' : `, ${pairs} pairs`}`),
  ];
}

/** The bar alone and both ends, each with its basis, the mean of the range where the group aims at it; and whose aim is another. */
function percentagesText(
  { percentages }: PlanBlock['explanation'],
  aim: PlanGroup['aim'],
  moreShare: number,
): string {
  const isByMean = aim.by === 'percent' && aim.targets.some(({ basis }) => basis === 'mean');
  const counted = (['bar', 'bottom', 'lockout', ...(isByMean ? (['mean'] as const) : [])] as const)
    .flatMap((basis) => {
      const found = percentages.find((percentage) => percentage.basis === basis);
      return found ? [`${percent(found.share)} ${basis}`] : [];
    })
    .join(', ');
  return moreShare === 0 ? counted : `${counted} (${pointsWords(moreShare)} than the group)`;
}

function referenceText({ reference }: Solved, { mass }: LineWords): string {
  const written = (kg: number) => `${barText(kg, mass)} ${mass}`;
  return `${written(reference.kg)}, ${referenceWords(reference, written)}, ${equipmentWord(reference.equipment)}`;
}
