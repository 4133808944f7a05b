import type { Kg } from '../numeric/quantity.ts';
import type { EquipmentName } from './parameters.ts';
import type { Rigging } from './Rigging.ts';

/** One logged set as evidence. Days count from any fixed day. Sets of a day stand in the order in which they were done. */
export interface SetEvidence {
  day: number;
  rigging: Rigging;
  barKg: Kg;
  /** Somebody looked at the bar that was written down, and it is right: never a slip of unit. */
  barChecked: boolean;
  /** Share of the body that rises with the bar (kg). */
  movedBodyKg: Kg;
  equipment: EquipmentName;
  platform: boolean;
  /** Reps asked for and reps made; fewer made than asked means that the next one was missed. */
  reps: number;
  made: number;
  /** Where the miss stopped on the lifter's full range. */
  stoppedAtS: number | null;
  /** One for each rep made, or a single one for the fastest; m/s. */
  meanSpeedsMps: readonly number[];
  peakSpeedsMps: readonly number[];
  repsInReserve: number | null;
  /** Rest before the set (s); null: not written down. */
  restS: number | null;
}
