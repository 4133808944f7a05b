import { type CellReading } from '#contract/csv/cells.ts';
import { findReferred } from '#contract/csv/findReferred.ts';
import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import { splitAt, unescaped } from './escapedList.ts';

/** Finds records by id, label or name as `findReferred` does, and remembers what it found: files name the same few often. */
export type Find = (kind: KindName, cell: string, rackId?: string | null) => CellReading;

export function finder(club: ClubRecords): Find {
  const found = new Map<string, CellReading>();
  return (kind, cell, rackId = null) => {
    const key = JSON.stringify([kind, rackId, cell]);
    const known = found.get(key) ?? findReferred(club, kind, cell, rackId);
    found.set(key, known);
    return known;
  };
}

/** `Wide 1 @ low pegs @ Window rack; Thin 2 @ low pegs`: pair, hookup and rack; several with `;` between them. */
export function readBands(
  cell: string,
  { find, club, rackId, lift }: { find: Find; club: ClubRecords; rackId: string | null; lift: Lift },
): { bands: Setup['bands']; rackId: string | null } | { wrong: string } {
  const bands: Setup['bands'] = [];
  let rackOfBands = rackId;
  for (const part of listed(cell)) {
    const [label = '', hookup = '', rack = ''] = splitAt(part, '@').map(unescaped);
    const pair = find('bandPair', label);
    if ('wrong' in pair) return pair;
    const named = rack === '' ? { value: rackId } : find('rack', rack);
    if ('wrong' in named) return named;
    const bandRackId = named.value as string | null;
    const held =
      hookup === '' ? onlyHookup(club, label, bandRackId, lift) : find('hookup', hookup, bandRackId);
    if ('wrong' in held) return held;
    bands.push({ bandPairId: pair.value as string, hookupId: held.value as string });
    rackOfBands ??= bandRackId ?? club.hookup.find(({ id }) => id === held.value)?.rackId ?? null;
  }
  return { bands, rackId: rackOfBands };
}

/** `2 x Heavy; Light`: how many pairs of which chain. */
export function readChains(cell: string, find: Find): { chains: Setup['chains'] } | { wrong: string } {
  const chains: Setup['chains'] = [];
  for (const part of listed(cell)) {
    const [, count = '1', label = part] = /^(\d+)\s*[x×]\s+(.+)$/s.exec(part) ?? [];
    const chain = find('chainPair', unescaped(label));
    if ('wrong' in chain) return chain;
    chains.push({ chainPairId: chain.value as string, pairs: Number(count) });
  }
  return { chains };
}

function listed(cell: string): string[] {
  return splitAt(cell, ';').filter((part) => part !== '');
}

/** The hookup where only one can be meant. */
function onlyHookup(club: ClubRecords, pair: string, rackId: string | null, lift: Lift): CellReading {
  const possible = club.hookup.filter(
    (hookup) => hookup.lifts.includes(lift) && (rackId === null || hookup.rackId === rackId),
  );
  const [only] = possible;
  if (only && possible.length === 1) return { value: only.id };
  return { wrong: `"${pair}" could hang in ${possible.length} hookups; write it as "pair @ hookup @ rack".` };
}
