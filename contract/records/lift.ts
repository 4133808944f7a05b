import { z } from 'zod';
import { recordId } from './kind.ts';

export const lift = z.enum(['squat', 'bench', 'deadlift']);
export type Lift = z.infer<typeof lift>;

export const equipment = z.enum(['raw', 'wraps', 'single-ply', 'multi-ply']);
export type Equipment = z.infer<typeof equipment>;

/**
 * How the way up begins. `free`: straight out of the lowering, touch and go on the bench, from the floor in the
 * deadlift. The rest carry a height in `heightM`: box top, pins (bar centre above the floor), boards (thickness),
 * blocks (discs raised by), deficit (lifter raised by). `paused` carries none.
 */
export const start = z.strictObject({
  way: z.enum(['free', 'paused', 'box', 'pins', 'boards', 'blocks', 'deficit']),
  heightM: z.number().min(0).max(3).nullable().default(null),
});
export type Start = z.infer<typeof start>;

/** A pair of bands on the bar: which pair, and which of the rack's hookups holds it. */
export const bandOnBar = z.strictObject({ bandPairId: recordId, hookupId: recordId });
export type BandOnBar = z.infer<typeof bandOnBar>;

/** All that is on the bar and under the lifter. The bar's mass counts bar, collars and discs. */
export const setup = z.strictObject({
  rackId: recordId.nullable().default(null),
  start,
  barKg: z.number().min(0).max(1000),
  bands: z.array(bandOnBar).max(6).default([]),
  /** Number of pairs of each chain hung on. */
  chains: z
    .array(z.strictObject({ chainPairId: recordId, pairs: z.number().int().min(1).max(10) }))
    .default([]),
});
export type Setup = z.infer<typeof setup>;

/** A start and what hangs on the bar. */
export const setupFamily = z.strictObject({
  way: start.shape.way,
  hung: z.enum(['straight', 'bands', 'chains', 'bandsAndChains', 'lightened']),
});
export type SetupFamily = z.infer<typeof setupFamily>;
