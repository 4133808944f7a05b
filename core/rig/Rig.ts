import type { BandCurves } from '../band/BandCurve.ts';

/** A point that a band hangs on, seen from its sleeve: x fore-aft (+ front), y sideways, z above the floor (m). */
export interface Anchor {
  xM: number;
  yM: number;
  zM: number;
}

/** How the loop runs between anchor and sleeve. `spentM`: relaxed loop length that the choke uses up. */
export type Hookup = { way: 'single' } | { way: 'doubled' } | { way: 'choked'; spentM: number };

/** `count` loops alike, each in the same hookup (2 = one each side). */
export interface RiggedBand {
  curves: BandCurves;
  hookup: Hookup;
  anchor: Anchor;
  count: number;
}

/** Vertical pull read on a scale at bar heights, in place of geometry; down is positive. Two readings or more. */
export interface HungBand {
  verticalAt: readonly { zM: number; forceN: number }[];
  count: number;
}

/** A chain that hangs straight down from the bar and piles up on the floor. */
export interface Chain {
  massPerMetreKg: number;
  lengthM: number;
  attachBelowBarM: number;
  count: number;
}
