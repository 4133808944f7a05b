import type { Highs, Model, ModelData } from 'highs';

/** Minimise `sum(cost x)` with `lower <= x <= upper` and every row's sum between its own bounds. */
export interface LinearProgram {
  columns: readonly { cost: number; upper: number; integer: boolean }[];
  rows: readonly { lower: number; upper: number; terms: readonly { column: number; factor: number }[] }[];
}

export interface IntegerSolution {
  /** `timeLimit`: the best found in time; the gap says how much better another could be. */
  status: 'optimal' | 'timeLimit';
  values: readonly number[];
  objective: number;
  /** No solution costs less. */
  bound: number;
}

export interface RelaxedSolution {
  objective: number;
  /** Shadow price of each row: change of the objective per unit of its bound. */
  rowPrices: readonly number[];
}

/** Integer columns may miss a whole number by this, rows their bounds: the solver's own tolerance. */
const TOLERANCE = 1e-6;

/**
 * Solves with HiGHS (branch and cut). Null where nothing feasible was found; a solution is checked against rows and
 * integrality before it is believed. Columns are at least 0.
 */
export async function solveInteger(
  program: LinearProgram,
  timeLimitS: number,
): Promise<IntegerSolution | null> {
  const highs = await loadSolver();
  return highs.withModel(modelData(highs, program, true), (model: Model): IntegerSolution | null => {
    model.options.set({ time_limit: timeLimitS, mip_rel_gap: 0, mip_abs_gap: 1e-7 });
    model.run();
    const status = model.getModelStatus();
    const { optimal, timeLimit } = highs.constants.modelStatus;
    if (status !== optimal && status !== timeLimit) return null;
    const values = [...model.getSolution().colValue];
    if (values.length === 0 || !isFeasible(program, values)) return null;
    const objective = program.columns.reduce((sum, { cost }, i) => sum + cost * values[i]!, 0);
    const bound = status === optimal ? objective : Number(model.info.get('mip_dual_bound'));
    return { status: status === optimal ? 'optimal' : 'timeLimit', values, objective, bound };
  });
}

/** Solves without integrality, for a bound and for the prices of the rows. Null where infeasible. */
export async function solveRelaxed(program: LinearProgram): Promise<RelaxedSolution | null> {
  const highs = await loadSolver();
  return highs.withModel(modelData(highs, program, false), (model: Model) => {
    model.run();
    if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
    return { objective: model.getObjectiveValue(), rowPrices: [...model.getSolution().rowDual] };
  });
}

let solver: Promise<Highs> | null = null;

/** The solver is 3.5 MB of WebAssembly: loaded once, when first needed. */
function loadSolver(): Promise<Highs> {
  solver ??= import('highs').then(({ default: load }) => load());
  return solver;
}

function modelData(highs: Highs, { columns, rows }: LinearProgram, integers: boolean): ModelData {
  const { continuous, integer } = highs.constants.variableType;
  const starts = [0];
  for (const row of rows) starts.push(starts.at(-1)! + row.terms.length);
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: columns.map(({ cost }) => cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices: rows.flatMap(({ terms }) => terms.map(({ column }) => column)),
      values: rows.flatMap(({ terms }) => terms.map(({ factor }) => factor)),
    },
    ...(integers ? { integrality: columns.map((column) => (column.integer ? integer : continuous)) } : {}),
  };
}

function isFeasible({ columns, rows }: LinearProgram, values: readonly number[]): boolean {
  return (
    columns.every(({ upper, integer }, i) => {
      const value = values[i]!;
      return (
        value >= -TOLERANCE &&
        value <= upper + TOLERANCE &&
        (!integer || Math.abs(value - Math.round(value)) <= TOLERANCE)
      );
    }) &&
    rows.every(({ lower, upper, terms }) => {
      const sum = terms.reduce((total, { column, factor }) => total + factor * values[column]!, 0);
      return sum >= lower - 10 * TOLERANCE && sum <= upper + 10 * TOLERANCE;
    })
  );
}
