import type { Chain, HungBand, RiggedBand } from '../rig/Rig.ts';
import type { BarAndDiscs } from './plates.ts';

/** One way of hanging one band pair at a rack: geometry, one entry a band, or a scale's readings in its place. */
export interface PairHookup {
  pairId: string;
  hookupId: string;
  bands: readonly RiggedBand[];
  hungBands: readonly HungBand[];
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
