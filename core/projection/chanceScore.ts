/** An attempt with the chance that was foretold for it. */
export interface Tried {
  chance: number;
  made: boolean;
}

/** Attempts of alike chance: how many were expected to be made, and how many were. */
export interface ChanceBin {
  from: number;
  to: number;
  count: number;
  expected: number;
  made: number;
}

/** Few bins, narrow where attempts are usually chosen. */
const EDGES = [0, 0.3, 0.6, 0.8, 0.9, 1];

export function chanceBins(tried: readonly Tried[]): ChanceBin[] {
  return EDGES.slice(1).map((to, i) => {
    const from = EDGES[i]!;
    const inside = tried.filter(({ chance }) => chance >= from && (chance < to || to === 1));
    return {
      from,
      to,
      count: inside.length,
      expected: inside.reduce((sum, { chance }) => sum + chance, 0),
      made: inside.filter(({ made }) => made).length,
    };
  });
}

/** Mean squared distance of the chance from what came, 1 or 0 (Brier 1950, Mon Weather Rev 78:1); null without attempts. */
export function brierScore(tried: readonly Tried[]): number | null {
  if (tried.length === 0) return null;
  return tried.reduce((sum, { chance, made }) => sum + (chance - (made ? 1 : 0)) ** 2, 0) / tried.length;
}
