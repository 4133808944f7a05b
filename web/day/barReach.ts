/** How far and in which steps a bar is dragged by hand, from what it weighs now (kg). */
export function barReach(keptKg: number): { minKg: number; maxKg: number; stepKg: number } {
  return { minKg: 5, maxKg: Math.max(200, 2 * keptKg), stepKg: 2.5 };
}
