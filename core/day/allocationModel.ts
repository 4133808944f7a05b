import type { LinearProgram } from '#core/numeric/integerProgram.ts';
import type { AllocationInput } from './Allocation.ts';
import { handlingWeight } from './handling.ts';
import { sharedStock } from './sharedStock.ts';
import { neighbourTurns, type Team } from './teams.ts';

/** Of nearly equal sets the one with fewer loops: what one hung pair costs, far below what any band is known to. */
const HUNG_PAIR = 1e-4;
const FREE = Number.POSITIVE_INFINITY;

export interface RowPart {
  row: number;
  factor: number;
}

/**
 * The allocation as an integer program over listed sets.
 *
 *   x(team, set) = 1: the team takes the set               cost: misfit + 0.0001 a hung pair
 *   y(rack, pair) >= sum of x over sets with the pair      for every team of the rack; sum of y over racks <= 1
 *   n(rack, chain) >= pairs of the chain that x takes      sum of n over racks <= pairs in stock
 *   d(turn, hookup) >= what goes on at this turn           cost: twice, since in a full rotation all comes off again
 *
 * Only x is integer: y, n and d follow. Rows are the same whatever is listed.
 */
export interface AllocationModel {
  program(listed: readonly ReadonlySet<number>[]): LinearProgram;
  /** The rows that a team's set takes part in. */
  rowsOf(team: number, set: number): RowPart[];
  /** The set of each team in a solution of `program(listed)`. */
  chosenSets(values: readonly number[], listed: readonly ReadonlySet<number>[]): number[];
}

/** Cost of a set with a given misfit. */
export function columnCost(team: Team, set: number, misfit: number): number {
  return misfit + HUNG_PAIR * team.sets[set]!.hookups.length * team.lifters.length;
}

export function allocationModel(input: AllocationInput, teams: readonly Team[]): AllocationModel {
  const rows: { lower: number; upper: number; terms: { column: number; factor: number }[] }[] = [];
  const columns: { cost: number; upper: number; integer: boolean }[] = [];
  const addRow = (lower: number, upper: number) => rows.push({ lower, upper, terms: [] }) - 1;
  const addColumn = (cost: number, parts: readonly RowPart[]) => {
    const column = columns.push({ cost, upper: FREE, integer: false }) - 1;
    for (const { row, factor } of parts) rows[row]!.terms.push({ column, factor });
  };
  const turnRow = teams.map(() => addRow(1, 1));
  /** For each team: what each hookup, and each pair of a chain, adds to which rows. */
  const hookupRows = teams.map((team) => input.racks[team.rack]!.hookups.map((): RowPart[] => []));
  const chainRows = teams.map((team) => input.racks[team.rack]!.chains.map((): RowPart[] => []));

  for (const { capacity, users } of sharedStock(input)) {
    if (users.length < 2) continue;
    const capacityRow = addRow(-FREE, capacity);
    for (const { rack, hookups, chain } of users) {
      const links = teams.flatMap((team, t) => {
        if (team.rack !== rack) return [];
        const row = addRow(-FREE, 0);
        for (const hookup of hookups) hookupRows[t]![hookup]!.push({ row, factor: 1 });
        if (chain !== null) chainRows[t]![chain]!.push({ row, factor: 1 });
        return [{ row, factor: -1 }];
      });
      addColumn(0, [{ row: capacityRow, factor: 1 }, ...links]);
    }
  }
  const changeCost = 2 * handlingWeight(input.oneSetPull) * input.bandChangeMinutes;
  if (changeCost > 0) {
    for (const { before, after } of neighbourTurns(input, teams)) {
      for (const partsOf of [hookupRows, chainRows]) {
        partsOf[after]!.forEach((parts, i) => {
          const row = addRow(-FREE, 0);
          parts.push({ row, factor: 1 });
          partsOf[before]![i]!.push({ row, factor: -1 });
          addColumn(changeCost, [{ row, factor: -1 }]);
        });
      }
    }
  }

  const rowsOf = (t: number, set: number): RowPart[] => {
    const { hookups, chainPairs } = teams[t]!.sets[set]!;
    return [
      { row: turnRow[t]!, factor: 1 },
      ...hookups.flatMap((index) => hookupRows[t]![index]!),
      ...chainPairs.flatMap((pairs, kind) =>
        pairs === 0 ? [] : chainRows[t]![kind]!.map(({ row, factor }) => ({ row, factor: factor * pairs })),
      ),
    ];
  };
  return {
    rowsOf,
    program(listed) {
      const full = rows.map((row) => ({ ...row, terms: [...row.terms] }));
      const takes = listing(listed).map(({ t, set }, i) => {
        for (const { row, factor } of rowsOf(t, set))
          full[row]!.terms.push({ column: columns.length + i, factor });
        return { cost: columnCost(teams[t]!, set, teams[t]!.misfit(set)), upper: 1, integer: true };
      });
      return { columns: [...columns, ...takes], rows: full };
    },
    chosenSets(values, listed) {
      const takes = listing(listed).filter((_, i) => values[columns.length + i]! > 0.5);
      return teams.map((_, t) => takes.find((take) => take.t === t)!.set);
    },
  };
}

/** The order of the x columns. */
function listing(listed: readonly ReadonlySet<number>[]): { t: number; set: number }[] {
  return listed.flatMap((sets, t) => [...sets].map((set) => ({ t, set })));
}
