/** What a percentage counts: the bar alone, or bar, bands and chains at the bottom, at lockout, on average. */
export type Basis = 'bar' | 'bottom' | 'lockout' | 'mean';

/** What a prescription aims at. Shares are fractions, speeds are mean speeds of the first rep. */
export type Aim =
  | { by: 'percent'; targets: readonly { basis: Basis; share: number }[] }
  | { by: 'capability'; bottomShare: number; lockoutShare: number }
  | { by: 'speed'; fromMps: number; toMps: number };
