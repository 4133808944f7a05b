import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import type { Drawn } from '../useDrawn.ts';

/** A pair as a row, or one who has none; in the order of the ways, null where nobody has that way. */
export interface PairRow {
  key: string;
  pair: number | null;
  byWay: readonly (Drawn | null)[];
}

/** Who trains by which way: pairs by their numbers, then who was drawn without one, two of different ways to a row. */
export function pairRows({ ways, drawn }: Pick<ComparisonPlan, 'ways' | 'drawn'>): PairRow[] {
  const numbers = [...new Set(drawn.flatMap(({ pair }) => pair ?? []))].sort((a, b) => a - b);
  const pairs = numbers.map((pair) => ({
    key: `pair ${pair}`,
    pair,
    byWay: ways.map((way) => drawn.find((one) => one.pair === pair && one.way === way) ?? null),
  }));
  const alone = ways.map((way) => drawn.filter((one) => one.pair === null && one.way === way));
  const most = Math.max(...alone.map(({ length }) => length));
  return [
    ...pairs,
    ...Array.from({ length: most }, (_, at) => ({
      key: `alone ${at}`,
      pair: null,
      byWay: alone.map((ones) => ones[at] ?? null),
    })),
  ];
}
