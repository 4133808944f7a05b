/** How a drawing writes its numbers. Inside a drawing everything is SI; letters are in the units of the view. */
export interface ChartUnits {
  massUnit: string;
  /** Weight (N) of one mass unit where the club stands. */
  newtonPerMass: number;
  lengthUnit: string;
  metrePerLength: number;
}

/** A force at the bar, written as the mass that weighs as much: "145". */
export function massText(units: ChartUnits, forceN: number): string {
  return String(Math.round(forceN / units.newtonPerMass));
}

/** A height or length with its unit: "72 cm", "28.5 in". */
export function lengthText(units: ChartUnits, lengthM: number): string {
  const value = lengthM / units.metrePerLength;
  return `${Math.round(value * 2) / 2} ${units.lengthUnit}`;
}
