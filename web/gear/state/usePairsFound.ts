import type { BandPair } from '#contract/records/gear.ts';
import { type Found, useFound } from '#web/parts/useFound.ts';
import type { PairState } from './pairState.ts';

/** Pairs looked for by label, width or note, lightest first unless asked otherwise. */
export function usePairsFound(pairs: readonly PairState[]): Found<PairState> {
  return useFound(pairs, textsOf, [
    {
      value: 'width',
      word: 'width',
      compare: (x, y) => x.pair.widthMm - y.pair.widthMm || byLabel(x.pair, y.pair),
    },
    { value: 'label', word: 'label', compare: (x, y) => byLabel(x.pair, y.pair) },
    {
      value: 'wants',
      word: 'what needs a look',
      compare: (x, y) => wants(y) - wants(x) || x.pair.widthMm - y.pair.widthMm,
    },
  ]);
}

function textsOf({ pair }: PairState): string[] {
  return [pair.label, `${pair.widthMm} mm`, pair.note];
}

function byLabel(x: BandPair, y: BandPair): number {
  return x.label.localeCompare(y.label, undefined, { numeric: true });
}

function wants({ sides, mismatch }: PairState): number {
  return sides.reduce((sum, { findings }) => sum + findings.length, mismatch.flagged ? 1 : 0);
}
