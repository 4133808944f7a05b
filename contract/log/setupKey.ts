import type { Equipment, Lift, Setup } from '#contract/records/lift.ts';

/** What makes two sets comparable bar for bar: everything but the bar itself. */
export interface KeyedSetup {
  lift: Lift;
  equipment: Equipment;
  setup: Pick<Setup, 'start' | 'bands' | 'chains'>;
}

/**
 * One spelling for each exact setup: lift, equipment, start with its height to the millimetre, every band pair with its
 * hookup, chains by their number. The order in which bands and chains were written down does not matter; any real
 * difference does. A hookup belongs to one rack, so the rack is in it wherever it changes the load.
 */
export function setupKey({ lift, equipment, setup }: KeyedSetup): string {
  const { start, bands, chains } = setup;
  const heightMm = start.heightM === null ? null : Math.round(start.heightM * 1000);
  const hung = bands.map(({ bandPairId, hookupId }) => [bandPairId, hookupId]).sort(inOrder);
  return JSON.stringify([lift, equipment, start.way, heightMm, hung, chainsInAll(chains)]);
}

/** Pairs of each chain together, by id. */
function chainsInAll(chains: Setup['chains']): [string, number][] {
  const pairs = new Map<string, number>();
  for (const chain of chains) pairs.set(chain.chainPairId, (pairs.get(chain.chainPairId) ?? 0) + chain.pairs);
  return [...pairs].sort(inOrder);
}

/** By spelling and not by locale: the same on every machine. */
function inOrder(a: readonly unknown[], b: readonly unknown[]): number {
  const [left, right] = [JSON.stringify(a), JSON.stringify(b)];
  return left < right ? -1 : left > right ? 1 : 0;
}
