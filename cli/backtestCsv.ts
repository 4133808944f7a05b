import { stringify } from 'csv-stringify/sync';
import { guardFormula } from '#contract/csv/formulaGuard.ts';
import type { BacktestReport, ForetoldLift } from '#contract/projection/backtestReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';

/** One line for each lift of each meet, masses in kg; for spreadsheets and other programs. */
export function backtestCsv({ lifts }: BacktestReport, { lifter }: Pick<ClubRecords, 'lifter'>): string {
  const nameOf = new Map(lifter.map(({ id, name }) => [id, name]));
  const lines = lifts.map((one) => columns.map(([, read]) => read(one, nameOf)));
  return stringify([
    columns.map(([head]) => head),
    ...lines.map((line) => line.map((cell) => (typeof cell === 'string' ? guardFormula(cell) : cell))),
  ]);
}

type Cell = string | number | null;

const columns: [string, (one: ForetoldLift, nameOf: Map<string, string>) => Cell][] = [
  ['date', ({ on }) => on],
  ['place', ({ place }) => place],
  ['lifter', ({ lifterId }, nameOf) => nameOf.get(lifterId) ?? lifterId],
  ['lift', ({ lift }) => lift],
  ['equipment', ({ equipment }) => equipment],
  ['sets_before', ({ setCount }) => setCount],
  ['foretold_kg', ({ maxKg }) => tenth(maxKg.median)],
  ['low80_kg', ({ maxKg }) => tenth(maxKg.low80)],
  ['high80_kg', ({ maxKg }) => tenth(maxKg.high80)],
  ['low95_kg', ({ maxKg }) => tenth(maxKg.low95)],
  ['high95_kg', ({ maxKg }) => tenth(maxKg.high95)],
  ['best_so_far_kg', ({ bestSoFarKg }) => tenth(bestSoFarKg)],
  ['gym_gain_kg', ({ ruleKg }) => tenth(ruleKg)],
  ['made_kg', ({ madeKg }) => madeKg],
  ['missed_above_kg', ({ missedKg }) => missedKg],
];

function tenth(kg: number | null): number | null {
  return kg === null ? null : Math.round(10 * kg) / 10;
}
