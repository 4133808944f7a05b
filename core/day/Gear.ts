import type { Chain, HungBand, RiggedBand } from '#core/rig/Rig.ts';
import type { BarAndDiscs } from './plates.ts';

/** One way of hanging one band pair at a rack. */
export interface PairHookup {
  pairId: string;
  hookupId: string;
  anchorId: string;
  /** What one anchor point may carry; null where nobody knows. */
  ratedLoadN: number | null;
  /** Geometry, one entry a band. Rules unless the pull was read on a scale. */
  rigged: readonly RiggedBand[];
  /** Pull of the pair read on a scale at bar heights; overrules geometry. */
  measured: HungBand | null;
}

/** A kind of chain at a rack; `chain.count` is 2, one chain a side, and `pairs` of them are in stock. */
export interface ChainKind {
  chainPairId: string;
  chain: Chain;
  pairs: number;
}

/** All that may go on one rack's bar for one lift. */
export interface RackGear extends BarAndDiscs {
  hookups: readonly PairHookup[];
  chains: readonly ChainKind[];
}

/** Bands and chains hung on the bar: indices into `RackGear.hookups`, ascending, and pairs of each chain kind. */
export interface GearSet {
  hookups: readonly number[];
  chainPairs: readonly number[];
}
