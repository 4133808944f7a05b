import { normalCdf } from '../numeric/normal.ts';
import { STEP_LN } from './lattice.ts';
import { ENTRIES, SLIP_SD_LN, WILD_SHARE } from './noise.ts';

/** Beyond so much ln strength to spare or lacking a set is as good as made or missed: the rest is below 1e-7. */
const SPAN_LN = 4.5 * SLIP_SD_LN;
/**
 * The chance by the strength to spare is tabulated at so many places in each step of the grid, and read between them to 1e-6. All
 * that a run along the grid reads stands together: a row holds one place of every step.
 */
const PLACES = 100;
const STEPS = Math.ceil((2 * SPAN_LN) / STEP_LN) + 2;

/** Chance that strength is enough, slips included, wild entries not. */
const ABOVE = tabulated((surplus) =>
  ENTRIES.reduce((sum, { share, sdLn }) => sum + share * normalCdf(surplus / sdLn), 0),
);
/** Chance of a made entry where strength is in plenty. */
const IN_PLENTY = WILD_SHARE / 2 + ABOVE[ABOVE.length - 1]!;
/** Chance of one to three made entries, over the chance in plenty. */
const MADE = [1, 2, 3].map((times) => ABOVE.map((above) => ((WILD_SHARE / 2 + above) / IN_PLENTY) ** times));

function tabulated(chance: (surplus: number) => number): Float64Array {
  return Float64Array.from({ length: (PLACES + 1) * STEPS }, (_, i) =>
    chance(((i % STEPS) + Math.floor(i / STEPS) / PLACES) * STEP_LN - SPAN_LN),
  );
}

/** Where a run from this surplus on begins in the table: step, row, and the way to the next row. */
function placeOf(surplus: number): { step: number; row: number; share: number } {
  const x = (surplus + SPAN_LN) / STEP_LN;
  const step = Math.floor(x);
  const place = (x - step) * PLACES;
  const row = Math.floor(place);
  return { step, row, share: place - row };
}

/**
 * Multiplies in, at every grid point, the chance that `times` sets (up to three) for which `enough` is needed go, over the
 * chance that strength in plenty has; returns the ln of that. The first value stands at surplus `from`.
 */
export function multiplyMade(values: Float64Array, from: number, enough: number, times: number): number {
  const { step, row, share } = placeOf(from - enough);
  const table = MADE[times - 1]!;
  const low = row * STEPS + step;
  const high = low + STEPS;
  const reached = Math.min(values.length, Math.max(0, -step));
  const plenty = Math.min(values.length, STEPS - step);
  for (let i = 0; i < reached; i++) values[i]! *= table[0]!;
  for (let i = reached; i < plenty; i++) {
    const chance = table[low + i]!;
    values[i]! *= chance + share * (table[high + i]! - chance);
  }
  return times * Math.log(IN_PLENTY);
}

/** Multiplies in the chance that just these reps go: `enough` is needed for them, `more` for one more. */
export function multiplyMissed(
  values: Float64Array,
  from: number,
  enough: number,
  more: number,
  times: number,
): void {
  for (let i = 0; i < values.length; i++) {
    const surplus = from + i * STEP_LN;
    const chance = WILD_SHARE / 2 + chanceAbove(surplus - enough) - chanceAbove(surplus - more);
    // Not by `**`, which is most of the work.
    for (let k = 0; k < times; k++) values[i]! *= chance;
  }
}

function chanceAbove(surplus: number): number {
  if (surplus <= -SPAN_LN) return 0;
  if (surplus >= SPAN_LN) return ABOVE[ABOVE.length - 1]!;
  const { step, row, share } = placeOf(surplus);
  const chance = ABOVE[row * STEPS + step]!;
  return chance + share * (ABOVE[(row + 1) * STEPS + step]! - chance);
}
