import { tiringOf } from '../../effort/Tiring.ts';
import { populationShape } from '../../lifter/populationShape.ts';
import type { Rigging } from '../Rigging.ts';
import type { LiftModel } from '../readGroup.ts';
import type { ResponseTable } from '../response.ts';
import type { SetModel } from '../setModel.ts';

/** The tabulated shapes of a start with a rebound: 20 at the middle top speed and 4 at either other. */
const SHAPES = 28;
const roots = Array.from({ length: 14 }, (_, j) => j / 10);

const alike = (values: readonly number[]) =>
  Float64Array.from(Array.from({ length: SHAPES }, () => values).flat());

/**
 * A set whose table is alike for every shape, for closed forms: a rep at 0.3 m/s and the root of what is spare, its peak half as fast
 * again, as much effort (s) as that root says.
 */
export function alikeModel(
  start: Rigging['start'],
  lnTotal: number,
  lnLimit: number,
  bandShare: number,
  bodyShare = 0,
  effortS = (root: number) => 2 + root,
): SetModel {
  const table: ResponseTable = {
    lnLimit: alike([lnLimit]),
    speedMps: alike(roots.map((root) => 0.3 + root)),
    effortS: alike(roots.map(effortS)),
    stopS: alike([0.3, 0.3, 0.3, 0.3, 0.3, 0.3]),
    peakRatio: Float64Array.from(roots, () => 1.5),
    bandShare,
  };
  const mixture = { tables: [table], weights: [1] };
  return {
    start,
    lnTotal,
    limit: mixture,
    bandShare,
    motion: { ...mixture, peakRatio: table.peakRatio, bodyShare },
  };
}

/** A squat whose straight lift is 100 kg of it. */
export const lift: LiftModel = {
  shape: populationShape('squat'),
  tiring: tiringOf('squat'),
  reference: alikeModel('free', Math.log(100), 0.05, 0),
  told: 'all',
};
