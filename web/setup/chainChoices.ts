import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Setup } from '#contract/records/lift.ts';

type Chains = Setup['chains'];

/** A kind of chain with how many pairs of it hang, as one choice. */
export interface ChainChoice {
  value: string;
  word: string;
  chain: Chains[number];
}

/** The kinds that do not hang yet, in the club's order. */
export function freeChains(club: Pick<ClubRecords, 'chainPair'>, chains: Chains): ClubRecords['chainPair'] {
  return club.chainPair.filter(
    (kind) => kind.pairs > 0 && !chains.some(({ chainPairId }) => chainPairId === kind.id),
  );
}

/** What one row of chains can be: its own kind and each that does not hang yet, in every number of pairs that the club has. */
export function chainChoices(
  club: Pick<ClubRecords, 'chainPair'>,
  chains: Chains,
  own: Chains[number],
): ChainChoice[] {
  const free = freeChains(club, chains);
  const offered = club.chainPair.filter((kind) => kind.id === own.chainPairId || free.includes(kind));
  const choices = offered.flatMap(({ id, label, pairs }) =>
    Array.from({ length: pairs }, (_, n) => choice({ chainPairId: id, pairs: n + 1 }, label)),
  );
  if (choices.some(({ value }) => value === chainKey(own))) return choices;
  // It hung once: the club has fewer now, or none.
  const label = club.chainPair.find(({ id }) => id === own.chainPairId)?.label ?? 'chains no longer kept';
  return [choice(own, label), ...choices];
}

export function chainKey({ chainPairId, pairs }: Chains[number]): string {
  return `${chainPairId} ${pairs}`;
}

function choice(chain: Chains[number], label: string): ChainChoice {
  const word = `${chain.pairs === 1 ? 'a pair' : `${chain.pairs} pairs`} of ${label}`;
  return { value: chainKey(chain), word, chain };
}
