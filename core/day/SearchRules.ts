/** What a search may propose; what the coach hangs by hand is not held to it, only warned of. */
export interface SearchRules {
  /** No band is stretched beyond this ratio. */
  safeStretch: number;
}

/** Without a club's own rules: any stretch. Rated anchors hold in any case. */
export const freeSearch: SearchRules = { safeStretch: Number.POSITIVE_INFINITY };
