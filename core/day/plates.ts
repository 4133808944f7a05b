/**
 * What goes on each side of the bar for a wanted mass, from the pairs of discs at hand.
 *
 * Exact: dynamic programming over whole grams a side. Of the loadable masses the nearest is taken; where two are
 * equally near, the lighter, since a load that is too light is the safer mistake. Of the ways to load it the one
 * with the fewest discs, then the one with the heaviest discs inside.
 *
 * `plates({ targetKg: 100, barKg: 20, collarsKg: 0, discs: [{ massKg: 20, pairs: 2 }] })`
 * gives `{ loadedKg: 100, perSide: [{ massKg: 20, count: 2 }] }`.
 */
export interface DiscStock {
  massKg: number;
  /** Whole pairs: one disc of each goes on each side. */
  pairs: number;
}

export interface BarAndDiscs {
  barKg: number;
  /** Both collars together. */
  collarsKg: number;
  discs: readonly DiscStock[];
}

export interface LoadedBar {
  /** Bar, collars and discs, from the discs' own masses. */
  loadedKg: number;
  /** Discs of one side, the heaviest (innermost) first. */
  perSide: { massKg: number; count: number }[];
}

export function plates({ targetKg, ...gear }: BarAndDiscs & { targetKg: number }): LoadedBar {
  const kinds = discKinds(gear.discs);
  const unitG = gramUnit(kinds);
  const sideUnits = ((targetKg - gear.barKg - gear.collarsKg) * 500) / unitG;
  const heaviest = kinds.at(-1)?.grams ?? 0;
  const limit = Math.max(0, Math.ceil(sideUnits) + heaviest / unitG);
  const fewest = fewestDiscs(kinds, unitG, limit);
  const last = fewest.at(-1)!;
  const below = last.findLastIndex((count, units) => count < UNREACHED && units <= sideUnits);
  const above = last.findIndex((count, units) => count < UNREACHED && units > sideUnits);
  const loads = [below, above]
    .filter((units) => units >= 0)
    .map((units) => unload(units, kinds, unitG, fewest, gear));
  const missKg = (load: LoadedBar) => Math.abs(load.loadedKg - targetKg);
  const [lighter, heavier] = loads;
  return heavier !== undefined && missKg(heavier) < missKg(lighter!) - TIE_KG ? heavier : lighter!;
}

/** Masses that differ by less than this count as equally near (a milligram: rounding of the arithmetic). */
const TIE_KG = 1e-6;
const UNREACHED = 0x7fff;

/** No bar is loaded with more discs than this (kg a side): about twice what the heaviest lift ever took (assumption). */
const MOST_A_SIDE_KG = 500;

/** Every mass (kg, ascending, bar and collars counted) that the discs at hand can load, told apart to the gram. */
export function loadableMasses(gear: BarAndDiscs): number[] {
  const kinds = discKinds(gear.discs);
  const unitG = gramUnit(kinds);
  const all = kinds.reduce((sum, kind) => sum + (kind.grams / unitG) * kind.pairs, 0);
  const limit = Math.min(all, Math.floor((MOST_A_SIDE_KG * 1000) / unitG));
  const masses: number[] = [];
  fewestDiscs(kinds, unitG, limit)
    .at(-1)!
    .forEach((count, units) => {
      if (count < UNREACHED) masses.push(gear.barKg + gear.collarsKg + (2 * units * unitG) / 1000);
    });
  return masses;
}

interface DiscKind {
  massKg: number;
  grams: number;
  pairs: number;
}

/** Kinds with at least one pair, the lightest first. */
function discKinds(discs: readonly DiscStock[]): DiscKind[] {
  return discs
    .map(({ massKg, pairs }) => ({ massKg, grams: Math.round(massKg * 1000), pairs }))
    .filter(({ grams, pairs }) => grams > 0 && pairs > 0)
    .sort((a, b) => a.massKg - b.massKg);
}

/** The greatest number of grams that divides every disc: usual discs keep the tables short. */
function gramUnit(kinds: readonly DiscKind[]): number {
  const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
  return kinds.reduce((unit, kind) => divisor(kind.grams, unit), 0) || 1;
}

/**
 * `table[k][u]`: fewest discs of the lightest k kinds that weigh u units a side. One pass a kind: along each
 * residue of the disc's weight a window of its pairs slides, whose least (count - steps) is kept at the front.
 */
function fewestDiscs(kinds: readonly DiscKind[], unitG: number, limit: number): Uint16Array[] {
  const bare = new Uint16Array(limit + 1).fill(UNREACHED);
  bare[0] = 0;
  const table = [bare];
  for (const kind of kinds) {
    const before = table.at(-1)!;
    const step = kind.grams / unitG;
    const after = new Uint16Array(limit + 1).fill(UNREACHED);
    for (let residue = 0; residue < step; residue++) slideWindow(before, after, residue, step, kind.pairs);
    table.push(after);
  }
  return table;
}

function slideWindow(
  before: Uint16Array,
  after: Uint16Array,
  residue: number,
  step: number,
  pairs: number,
): void {
  const window: { at: number; rank: number }[] = [];
  let front = 0;
  for (let at = 0, units = residue; units < before.length; at++, units += step) {
    const count = before[units]!;
    if (count < UNREACHED) {
      while (window.length > front && window.at(-1)!.rank >= count - at) window.pop();
      window.push({ at, rank: count - at });
    }
    while (front < window.length && window[front]!.at < at - pairs) front++;
    if (front < window.length) after[units] = window[front]!.rank + at;
  }
}

/** Reads the discs back out of the table, as many of the heaviest as the least count allows. */
function unload(
  units: number,
  kinds: readonly DiscKind[],
  unitG: number,
  fewest: readonly Uint16Array[],
  gear: BarAndDiscs,
): LoadedBar {
  const perSide: LoadedBar['perSide'] = [];
  let rest = units;
  for (let k = kinds.length - 1; k >= 0; k--) {
    const { grams, pairs, massKg } = kinds[k]!;
    const step = grams / unitG;
    const [whole, lighter] = [fewest[k + 1]![rest]!, fewest[k]!];
    let count = Math.min(pairs, Math.floor(rest / step));
    while (count + lighter[rest - count * step]! !== whole) count--;
    if (count > 0) perSide.push({ massKg, count });
    rest -= count * step;
  }
  const discsKg = perSide.reduce((sum, disc) => sum + 2 * disc.massKg * disc.count, 0);
  return { loadedKg: gear.barKg + gear.collarsKg + discsKg, perSide };
}

/** The finest step (kg) of the bar's mass: a pair of the lightest discs; 0 without discs. */
export function finestStepKg({ discs }: Pick<BarAndDiscs, 'discs'>): number {
  const masses = discs.flatMap(({ massKg, pairs }) => (pairs > 0 ? [massKg] : []));
  return masses.length > 0 ? 2 * Math.min(...masses) : 0;
}
