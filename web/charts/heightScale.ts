/** One height axis in true centimetres above the floor; every pane beside it uses the same. */
export interface HeightScale {
  /** Pixel row of a height above the floor. */
  y: (heightM: number) => number;
  /** Pixels of one metre, upwards and fore-aft alike: the rack is drawn to scale. */
  pxPerM: number;
  topM: number;
  floorY: number;
}

/** A scale that shows `topM` above the floor between two pixel rows. */
export function heightScale(topM: number, topY: number, floorY: number): HeightScale {
  const pxPerM = (floorY - topY) / topM;
  return { y: (heightM) => floorY - heightM * pxPerM, pxPerM, topM, floorY };
}
