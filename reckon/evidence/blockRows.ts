import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { HeightRow } from '#core/evidence/heightWorth.ts';
import type { ShareRow } from '#core/evidence/shareGain.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { HardLift } from './HardLift.ts';
import type { MeanPull } from './meanPull.ts';
import type { MeetStep } from './meetLifts.ts';

const MS_A_YEAR = 365.25 * 86_400_000;
/** A block of fewer sets says nothing of how it was trained (judgement). */
const LEAST_SETS = 10;

/**
 * Band share of each block from meet to meet: pull of the bands over all that was lifted, mean over the range, rep by rep. The log in its order,
 * which may be too long to be held at once.
 */
export async function shareRows(
  steps: readonly MeetStep[],
  sets: Long<LoggedSet>,
  pull: MeanPull,
): Promise<ShareRow[]> {
  const blocks = steps.map((step): Block => ({ step, first: [], bands: 0, whole: 0 }));
  const byLift = grouped(blocks, ({ step: { before } }) => `${before.lifterId} ${before.lift}`);
  for await (const set of sets) {
    if (set.struckAt !== null || set.platform || set.made <= 0) continue;
    for (const block of byLift.get(`${set.lifterId} ${set.lift}`) ?? [])
      if (set.doneOn > block.step.before.doneOn && set.doneOn < block.step.after.doneOn)
        takeIn(block, set, pull);
  }
  return blocks.flatMap(({ step: { before, after }, bands, whole }) =>
    whole > 0
      ? [
          {
            lifterId: before.lifterId,
            bandShare: bands / whole,
            platformGain: (after.barKg - before.barKg) / before.barKg,
            years: (Date.parse(after.doneOn) - Date.parse(before.doneOn)) / MS_A_YEAR,
          },
        ]
      : [],
  );
}

/** What was trained between two meets. */
interface Block {
  step: MeetStep;
  /** Until there are enough of them, which are then counted. */
  first: LoggedSet[];
  bands: number;
  whole: number;
}

function takeIn(block: Block, set: LoggedSet, pull: MeanPull): void {
  if (block.first.length < LEAST_SETS) block.first.push(set);
  else return count(block, set, pull);
  if (block.first.length === LEAST_SETS) for (const one of block.first) count(block, one, pull);
}

function count(block: Block, set: LoggedSet, pull: MeanPull): void {
  const hung = pull(set);
  if (hung === null) return;
  // Bands that carry part of the bar are no share of the load.
  block.bands += set.made * Math.max(0, hung.bandKg);
  block.whole += set.made * (set.setup.barKg + hung.chainKg + hung.bandKg);
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
