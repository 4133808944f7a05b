import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Setup } from '#contract/records/lift.ts';
import type { Rigging } from '#core/strength/Rigging.ts';
import { CannotAssemble } from '#reckon/gear/CannotAssemble.ts';
import { assembleLoad } from '#reckon/lifter/assembleLoad.ts';

/** What a setup is to a lifter, from the club's records; or the sentence that says what is missing. */
export function riggingAsked(
  club: ClubRecords,
  asked: { lifterId: string; lift: Lift; setup: Omit<Setup, 'barKg'>; on: string },
): Rigging | string {
  const setup = { ...asked.setup, barKg: 0 };
  try {
    const { load, heights } = assembleLoad(club, { ...asked, setup });
    return { load, start: setup.start.way, range: heights.range };
  } catch (error) {
    if (error instanceof CannotAssemble) return error.message;
    throw error;
  }
}
