import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { oneDecimal } from '#contract/words/written.ts';

type Loaded = Pick<PlanBlock, 'barKg' | 'perSide'>;

/**
 * What loaders call a bar: discs by the figures on their faces, bar and collars together to the club's step. A disc is never
 * rounded: one that is missing, or one too many, moves the figure by all that stands on it. Without a step it is the true mass.
 */
export function wallBarKg({ barKg, perSide }: Loaded, stepKg: number | null): number {
  if (stepKg === null) return barKg;
  const bothSides = (mass: (disc: Loaded['perSide'][number]) => number) =>
    2 * perSide.reduce((sum, disc) => sum + disc.count * mass(disc), 0);
  const emptyKg = barKg - bothSides(({ massKg }) => massKg);
  return Math.round(emptyKg / stepKg) * stepKg + bothSides(({ faceMassKg }) => faceMassKg);
}

/** A bar as it is written: the loader's figure, large, and the true mass where that reads otherwise. */
export interface WrittenBar {
  bar: string;
  /** "109.9", or nothing. */
  trueBar: string;
}

export function writtenBar(block: Loaded, stepKg: number | null, mass: MassUnit): WrittenBar {
  const bar = oneDecimal(wallBarKg(block, stepKg), mass);
  const trueBar = oneDecimal(block.barKg, mass);
  return { bar, trueBar: trueBar === bar ? '' : trueBar };
}

/** "109.9 kg weighed" where a scale has seen all of it, else "counts as 109.9 kg"; empty where the figure is the mass. */
export function trueBarWords({ trueBar }: WrittenBar, known: KnownHow, unit: string): string {
  if (trueBar === '') return '';
  return known === 'measured' ? `${trueBar} ${unit} weighed` : `counts as ${trueBar} ${unit}`;
}
