import type { Kg } from '../numeric/quantity.ts';
import type { GearSet } from './Gear.ts';

/** One proposal: what hangs, the bar's mass and how far it is from the aim. */
export interface PrescribedSetup {
  set: GearSet;
  barKg: Kg;
  misfit: number;
}
