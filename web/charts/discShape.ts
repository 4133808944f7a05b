/** How a disc is drawn where the club has not measured it. Diameters and colours by the powerlifting rule book. */
export interface DiscShape {
  diameterM: number;
  thicknessM: number;
  /** The rule book's colour; null where it leaves the colour open. */
  colour: 'red' | 'blue' | 'yellow' | null;
}

/**
 * Largest disc 45 cm; 20 kg and above at most 6 cm thick, 15 kg and under at most 3 cm; 25 red, 20 blue, 15 yellow, 10
 * and under any colour (powerlifting rule book, from memory, but for the 6 cm). Sizes between are assumptions for the drawing.
 */
export function discShape(
  massKg: number,
  measured: { diameterM: number | null; thicknessM: number | null },
): DiscShape {
  const usual = usualSizes.find((size) => massKg >= size.fromKg) ?? usualSizes[usualSizes.length - 1]!;
  return {
    diameterM: measured.diameterM ?? usual.diameterM,
    thicknessM: measured.thicknessM ?? usual.thicknessM,
    colour: massKg === 25 ? 'red' : massKg === 20 ? 'blue' : massKg === 15 ? 'yellow' : null,
  };
}

/** Assumptions for the drawing: iron discs of the usual make, heaviest first. */
const usualSizes = [
  { fromKg: 20, diameterM: 0.45, thicknessM: 0.035 },
  { fromKg: 15, diameterM: 0.4, thicknessM: 0.03 },
  { fromKg: 10, diameterM: 0.325, thicknessM: 0.028 },
  { fromKg: 5, diameterM: 0.228, thicknessM: 0.026 },
  { fromKg: 2.5, diameterM: 0.19, thicknessM: 0.02 },
  { fromKg: 1, diameterM: 0.16, thicknessM: 0.016 },
  { fromKg: 0, diameterM: 0.13, thicknessM: 0.012 },
] as const;
