import type { GearSet } from './Gear.ts';

/** One proposal: what hangs, the bar's mass and how far it is from the aim. */
export interface PrescribedSetup {
  set: GearSet;
  barKg: number;
  misfit: number;
}
