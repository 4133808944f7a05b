import type { Share } from '../numeric/quantity.ts';
/** What a search may propose; what the coach hangs by hand is not held to it, only warned of. */
export interface SearchRules {
  /** No band is stretched beyond this ratio. */
  safeStretch: number;
  /**
   * Of the work of all bands together, the most that may lie above the range that shares of capability and speeds are judged on:
   * at a half no bands hang that mostly do what they are not judged by.
   */
  mostLateShare: Share;
  bounds: SearchBounds;
}

/** What practice keeps to whatever the aim says; shares of the reference maximum. */
export interface SearchBounds {
  /** Least on the bar, collars counted. */
  leastBarShare: Share;
  /** Least and most pull of all bands together at lockout, where any hang; of bands from above at the bottom. */
  leastBandShare: Share;
  mostBandShare: Share;
  /** Most band pairs at once: loops a side. */
  mostPairs: number;
}

export const noBounds: SearchBounds = {
  leastBarShare: 0,
  leastBandShare: 0,
  mostBandShare: Number.POSITIVE_INFINITY,
  // What fits on a sleeve beside the discs and can still be handled; assumption, common practice.
  mostPairs: 3,
};

/** Without a club's own rules: any stretch, bands however late, no bounds. Rated anchors hold in any case. */
export const freeSearch: SearchRules = {
  safeStretch: Number.POSITIVE_INFINITY,
  mostLateShare: 1,
  bounds: noBounds,
};
