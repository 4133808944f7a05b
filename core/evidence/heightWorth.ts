import { grouped } from '#core/numeric/grouped.ts';
import { contrast, type Effect } from './contrast.ts';
import { fitMixed } from './fitMixed.ts';

/** A hard single off a box: everything but height, bar and date is the same within a `cell`. */
export interface HeightRow {
  lifterId: string;
  cell: string;
  heightM: number;
  years: number;
  lnBar: number;
}

/** Change of ln bar a metre of box. */
export interface HeightWorth {
  lifters: number;
  observations: number;
  effect: Effect;
  byLifter: { lifterId: string; observations: number; effect: Effect }[];
}

const LEAST_LIFTERS = 3;
const LEAST_CONTRASTS = 8;
/** Heights nearer than this are one (m). */
const SAME_HEIGHT_M = 0.004;

/**
 * `ln bar = cell + b height + c time`, b varying from lifter to lifter. Each cell's own level is taken out exactly by
 * comparing every set with the mean of those after it, weighted so that the errors stay equal and independent (forward
 * orthogonal deviations, Arellano & Bover 1995, J Econometrics 68:29). Null where too few boxes were ever changed.
 */
export function heightWorth(rows: readonly HeightRow[]): HeightWorth | null {
  const cells = grouped(rows, ({ cell }) => cell);
  const used = [...cells.values()].filter(hasTwoHeights);
  const contrasts = used.flatMap(orthogonalDeviations);
  const lifters = new Set(contrasts.map(({ lifterId }) => lifterId)).size;
  if (lifters < LEAST_LIFTERS || contrasts.length < LEAST_CONTRASTS) return null;
  const withTime = contrasts.some(({ years }) => Math.abs(years) > 1e-6);
  const fit = fitMixed({
    values: contrasts.map(({ lnBar }) => lnBar),
    fixed: contrasts.map(({ heightM, years }) => (withTime ? [heightM, years] : [heightM])),
    random: contrasts.map(({ heightM }) => [heightM]),
    groups: contrasts.map(({ lifterId }) => lifterId),
    method: 'reml',
  });
  const counted = grouped(used.flat(), ({ lifterId }) => lifterId);
  const weights = withTime ? [1, 0] : [1];
  return {
    lifters,
    observations: used.flat().length,
    effect: contrast(fit, weights),
    byLifter: fit.groups.map((group) => ({
      lifterId: group.name,
      observations: counted.get(group.name)?.length ?? 0,
      effect: contrast(fit, weights, { group, ofGroup: [1] }),
    })),
  };
}

function hasTwoHeights(cell: readonly HeightRow[]): boolean {
  const heights = cell.map(({ heightM }) => heightM);
  return Math.max(...heights) - Math.min(...heights) > SAME_HEIGHT_M;
}

function orthogonalDeviations(cell: readonly HeightRow[]): Omit<HeightRow, 'cell'>[] {
  const inTime = cell.toSorted((a, b) => a.years - b.years);
  return inTime.slice(0, -1).map((row, i) => {
    const after = inTime.slice(i + 1);
    const weight = Math.sqrt(after.length / (after.length + 1));
    const against = (of: (r: HeightRow) => number) =>
      weight * (of(row) - after.reduce((sum, r) => sum + of(r), 0) / after.length);
    return {
      lifterId: row.lifterId,
      heightM: against((r) => r.heightM),
      years: against((r) => r.years),
      lnBar: against((r) => r.lnBar),
    };
  });
}
