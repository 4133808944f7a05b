import { stringify } from 'csv-stringify/sync';
import { guardFormula } from '#contract/csv/formulaGuard.ts';
import type { DayPlan, PlanBlock, PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { barKnown, loadKnown } from '#contract/paper/lifterLine.ts';
import { noteFor } from '#contract/paper/placeNotes.ts';
import { type KnownHow, knownHow } from '#contract/records/knownHow.ts';
import { wordsOf } from '#reckon/day/wordsOf.ts';
import type { SolvedDay } from './SolvedDay.ts';

type Cell = string | number | null;
type Solved = NonNullable<PlanPlace['solved']>;

/** One line for each step of each lifter, SI units in the header; for spreadsheets and other programs. */
export function dayCsv(days: readonly SolvedDay[]): string {
  const rows = days.flatMap(({ plan, prescription, records }) => {
    const { notes } = wordsOf(plan, records);
    return linesOf(plan).map(({ group, place, cells }) => [
      ...cells,
      ...Array<Cell>(header.length - cells.length).fill(null),
      ...aboutPlan(prescription),
      noteFor(notes, group.groupId, place.lifterId),
    ]);
  });
  return stringify([[...header, ...planHeader, 'note_for_lifter'], ...rows.map((row) => row.map(cell))]);
}

function linesOf({ date, groups }: DayPlan): { group: PlanGroup; place: PlanPlace; cells: Cell[] }[] {
  return groups.flatMap((group) =>
    group.places.flatMap((place) => {
      const about = Object.values(aboutPlace(date, group, place));
      const { solved } = place;
      if (!solved) return [{ group, place, cells: [...about, place.problem] }];
      return solved.blocks.map((block) => ({
        group,
        place,
        cells: [...about, '', ...Object.values(aboutBlock(solved, block))],
      }));
    }),
  );
}

const header = [
  'date',
  'group',
  'lift',
  'rack',
  'turn',
  'lifter',
  'problem',
  'sets',
  'reps',
  'rest_s',
  'bar_kg',
  'discs_a_side',
  'bands',
  'chains',
  'bottom_N',
  'bottom_low95_N',
  'bottom_high95_N',
  'lockout_N',
  'lockout_low95_N',
  'lockout_high95_N',
  'reference_kg',
  'first_rep_mean_mps',
  'first_rep_s',
  'made',
  'last_rep_mean_mps',
  'set_s',
  'all_reps',
  'chance_all_reps',
  'chance_all_reps_shorter_rest',
  'set_mean_mps',
  'chance_in_zone',
  'bottom_share_of_strength',
  'lockout_share_of_strength',
  'bar_share_of_maximum',
  'bottom_share_of_maximum',
  'lockout_share_of_maximum',
  'mean_share_of_maximum',
  'bar_known',
  'loads_known',
];
const planHeader = ['number', 'worked_out_at', 'fingerprint'];

/** A spreadsheet would read "12e345" as a figure. */
function aboutPlan({ number, solvedAt, fingerprint }: SignedPrescription): Cell[] {
  return [number, solvedAt, `sha256:${fingerprint}`];
}

function aboutPlace(date: string, group: PlanGroup, place: PlanPlace): Record<string, Cell> {
  const rack = group.racks.find(({ rackId }) => rackId === place.rackId);
  return {
    date,
    group: group.title,
    lift: group.lift,
    rack: rack?.label ?? '',
    turn: place.turn,
    lifter: place.name,
  };
}

function aboutBlock(solved: Solved, block: PlanBlock): Record<string, Cell> {
  const { set, reference } = solved;
  const { bottom, lockout, firstRep, shares, percentages } = block.explanation;
  const shareOn = (basis: (typeof percentages)[number]['basis']) =>
    percentages.find((percentage) => percentage.basis === basis)?.share ?? null;
  return {
    sets: block.sets,
    reps: block.reps,
    rest: block.restSeconds,
    bar: thousandth(block.barKg),
    discs: block.perSide.map(({ faceMassKg, count }) => `${count} x ${faceMassKg}`).join(' + '),
    bands: set.bands.map(({ label, hookupWords }) => `${label} ${hookupWords}`).join('; '),
    chains: set.chains.map(({ label, pairs }) => `${pairs} x ${label}`).join('; '),
    bottom: tenth(bottom.totalN),
    bottomLow: tenth(bottom.low95N),
    bottomHigh: tenth(bottom.high95N),
    lockout: tenth(lockout.totalN),
    lockoutLow: tenth(lockout.low95N),
    lockoutHigh: tenth(lockout.high95N),
    reference: reference.kg,
    speed: thousandth(block.effort?.firstMps ?? firstRep.meanSpeedMps),
    seconds: Number(firstRep.durationS.toFixed(2)),
    made: firstRep.made ? 'yes' : 'no',
    lastSpeed: block.effort && thousandth(block.effort.lastMps),
    setSeconds: block.effort && tenth(block.effort.underStrainS),
    allReps: block.effort && (block.effort.missed === null ? 'yes' : 'no'),
    chance: block.expected && thousandth(block.expected.chanceAllReps),
    chanceShorterRest: block.expected && thousandth(block.expected.chanceShorterRest),
    setSpeed: block.effort && thousandth(block.effort.setMps),
    chanceInZone: thousandth(block.expected?.zone?.chance ?? null),
    bottomStrength: thousandth(shares[0]?.share ?? null),
    lockoutStrength: thousandth(shares.at(-1)?.share ?? null),
    barShare: thousandth(shareOn('bar')),
    bottomShare: thousandth(shareOn('bottom')),
    lockoutShare: thousandth(shareOn('lockout')),
    meanShare: thousandth(shareOn('mean')),
    barKnown: barKnown(solved),
    loadsKnown: worse(barKnown(solved), loadKnown(solved)),
  };
}

/** What rests on both is known no better than either. */
function worse(one: KnownHow, other: KnownHow): KnownHow {
  const order = knownHow.options;
  return order.indexOf(one) > order.indexOf(other) ? one : other;
}

function cell(value: Cell): Cell {
  return typeof value === 'string' ? guardFormula(value) : value;
}

function thousandth(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(3));
}

function tenth(forceN: number): number {
  return Number(forceN.toFixed(1));
}
