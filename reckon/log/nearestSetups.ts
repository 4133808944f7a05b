import type { KeyedSetup } from '#contract/log/setupKey.ts';

/**
 * How unlike two setups of one lift are, in steps that a coach would call one change: another pair of bands or chains, or
 * the same one hung otherwise, 5 cm of height; another way to start or other equipment counts for three (judgement).
 */
export function setupDistance(a: KeyedSetup, b: KeyedSetup): number {
  if (a.lift !== b.lift) return Number.POSITIVE_INFINITY;
  const way = a.setup.start.way === b.setup.start.way ? 0 : 3;
  const apartM = way === 0 ? Math.abs((a.setup.start.heightM ?? 0) - (b.setup.start.heightM ?? 0)) : 0;
  const equipment = a.equipment === b.equipment ? 0 : 3;
  const bands = unshared(hung(a), hung(b));
  const chains = unshared(chained(a), chained(b));
  return way + apartM / oneStepM + equipment + bands + chains;
}

/** Those of `others` that are most like `one`, itself left out, the most alike first. */
export function nearestSetups<Other extends KeyedSetup>(
  one: KeyedSetup,
  others: readonly Other[],
  count: number,
): Other[] {
  return others
    .map((other) => ({ other, distance: setupDistance(one, other) }))
    .filter(({ distance }) => distance > 0 && Number.isFinite(distance))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, count)
    .map(({ other }) => other);
}

const oneStepM = 0.05;

function hung({ setup }: KeyedSetup): string[] {
  return setup.bands.map(({ bandPairId, hookupId }) => JSON.stringify([bandPairId, hookupId]));
}

function chained({ setup }: KeyedSetup): string[] {
  return setup.chains.flatMap(({ chainPairId, pairs }) => Array.from({ length: pairs }, () => chainPairId));
}

/** How many changes turn one list into the other: what is exchanged counts once. */
function unshared(a: readonly string[], b: readonly string[]): number {
  const left = [...b];
  const onlyA = a.filter((item) => {
    const at = left.indexOf(item);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return Math.max(onlyA.length, left.length);
}
