import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { HeightRow } from '#core/evidence/heightWorth.ts';
import type { ShareRow } from '#core/evidence/shareGain.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { HardLift } from './HardLift.ts';
import type { MeanPull } from './meanPull.ts';
import type { MeetStep } from './meetLifts.ts';

const MS_A_YEAR = 365.25 * 86_400_000;
/** A block of fewer sets says nothing of how it was trained (judgement). */
const LEAST_SETS = 10;

/** Band share of each block from meet to meet: pull of the bands over all that was lifted, mean over the range, rep by rep. */
export function shareRows(
  steps: readonly MeetStep[],
  sets: readonly LoggedSet[],
  pull: MeanPull,
): ShareRow[] {
  const gym = sets.filter(({ struckAt, platform, made }) => struckAt === null && !platform && made > 0);
  const byLift = grouped(gym, ({ lifterId, lift }) => `${lifterId} ${lift}`);
  return steps.flatMap(({ before, after }) => {
    const block = (byLift.get(`${before.lifterId} ${before.lift}`) ?? []).filter(
      ({ doneOn }) => doneOn > before.doneOn && doneOn < after.doneOn,
    );
    if (block.length < LEAST_SETS) return [];
    let [bands, whole] = [0, 0];
    for (const set of block) {
      const hung = pull(set);
      if (hung === null) continue;
      // Bands that carry part of the bar are no share of the load.
      bands += set.made * Math.max(0, hung.bandKg);
      whole += set.made * (set.setup.barKg + hung.chainKg + hung.bandKg);
    }
    if (!(whole > 0)) return [];
    return [
      {
        lifterId: before.lifterId,
        bandShare: bands / whole,
        platformGain: (after.barKg - before.barKg) / before.barKg,
        years: (Date.parse(after.doneOn) - Date.parse(before.doneOn)) / MS_A_YEAR,
      },
    ];
  });
}

/** Hard lifts off a box, the best of each day, together where all but height, bar and date is the same. */
export function heightRows(lifts: readonly HardLift[]): HeightRow[] {
  const offBox = lifts.filter(
    ({ setup, barKg }) => setup.start.way === 'box' && setup.start.heightM !== null && barKg > 0,
  );
  const days = grouped(offBox, ({ lifterId, doneOn, key }) => `${lifterId} ${doneOn} ${key}`);
  return [...days.values()].map((day) => {
    const best = day.reduce((a, b) => (b.barKg > a.barKg ? b : a));
    return {
      lifterId: best.lifterId,
      cell: cellOf(best),
      heightM: best.setup.start.heightM!,
      years: Date.parse(best.doneOn) / MS_A_YEAR,
      lnBar: Math.log(best.barKg),
    };
  });
}

/** Lifter, lift, equipment and all that hangs on the bar. */
function cellOf({ lifterId, lift, equipment, setup }: HardLift): string {
  const bands = setup.bands.map(({ bandPairId, hookupId }) => `${bandPairId} ${hookupId}`).sort();
  const chains = setup.chains.map(({ chainPairId, pairs }) => `${chainPairId} ${pairs}`).sort();
  return JSON.stringify([lifterId, lift, equipment, bands, chains]);
}
