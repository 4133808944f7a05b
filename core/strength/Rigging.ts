import type { Start } from '../lifter/startHeights.ts';
import type { Load } from '../load/Load.ts';
import type { Capability } from '../rep/Capability.ts';

/** Everything under and on the bar but its own mass: what sets at different weights have in common. */
export interface Rigging {
  load: Omit<Load, 'barKg'>;
  start: Start['way'];
  /** The lifter's full range in the frame of `load`. */
  range: Capability['range'];
}
