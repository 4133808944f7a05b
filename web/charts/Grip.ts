/** Something in a picture that one takes hold of and moves, by pointer or by keys; all in SI. */
export interface Grip {
  /** "Bar of Ilse" */
  label: string;
  value: number;
  /** The value as one says it: "77.5 kg". */
  valueText: string;
  min: number;
  max: number;
  /** Where it may stop: every so much, or at these values only, lowest first. */
  stops: number | readonly number[];
  /** Each time it is moved on to another stop. */
  onMove: (value: number) => void;
}

/** The stop nearest to a value. */
export function nearestStop({ stops, min, max }: Grip, value: number): number {
  if (typeof stops !== 'number')
    return stops.reduce((best, stop) => (Math.abs(stop - value) < Math.abs(best - value) ? stop : best));
  // Rounded once more: 73 steps of 0.005 are 0.365, not 0.36500000000000005.
  const onStep = Number((Math.round(value / stops) * stops).toFixed(6));
  return Math.min(max, Math.max(min, onStep));
}

/** The stop so many further on; from a value between two stops, the next one in that direction counts first. */
export function furtherStop(grip: Grip, by: number): number {
  const { stops, value } = grip;
  const little = 1e-9;
  if (typeof stops === 'number') {
    const from = by > 0 ? Math.floor(value / stops + little) : Math.ceil(value / stops - little);
    return nearestStop(grip, (from + by) * stops);
  }
  const higher = stops.filter((stop) => stop > value + little);
  const lower = stops.filter((stop) => stop < value - little).toReversed();
  const ahead = by > 0 ? higher : lower;
  return ahead[Math.min(Math.abs(by), ahead.length) - 1] ?? value;
}
