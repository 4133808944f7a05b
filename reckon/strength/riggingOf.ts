import type { Lift, Setup } from '#contract/records/lift.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import { assembleLoad, type LoadRecords } from '#reckon/lifter/assembleLoad.ts';

/** The straight lift in which a lifter's strength is counted: as on the platform, where the bench press is paused. */
export function competitionSetup(lift: Lift): Setup {
  return {
    rackId: null,
    start: { way: lift === 'bench' ? 'paused' : 'free', heightM: null },
    barKg: 0,
    bands: [],
    chains: [],
  };
}

/** All of a setup but its bar, as it meets one lifter on a day. Throws CannotAssemble where the records lack something. */
export function riggingOf(
  records: LoadRecords,
  lifterId: string,
  lift: Lift,
  setup: Setup,
  on: string,
): Rigging {
  const { load, heights } = assembleLoad(records, { lifterId, lift, setup, on });
  return { load, start: setup.start.way, range: heights.range };
}
