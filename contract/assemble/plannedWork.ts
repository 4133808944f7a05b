import type { PlanBlock } from '#contract/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { plates } from '#core/day/plates.ts';
import { type BlockEffort, sessionEffort } from '#core/day/sessionEffort.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';
import { expectedOf } from './expectedOf.ts';

/** The blocks of a group with one bar for the aim: what is loaded, how it goes and what is to be expected. */
export interface PlannedWork {
  barKg: number;
  blocks: {
    loaded: ReturnType<typeof plates>;
    effort: BlockEffort | null;
    expected: PlanBlock['expected'];
  }[];
}

/** A bar is lightened no further than to this share of what was asked. */
const LIGHTEST_SHARE = 0.6;

/** Works the blocks out for any bar of the aim. */
export function workWith(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  set: GearSet,
): (barKg: number) => PlannedWork {
  const expected = expectedOf(records, group, place, assembled, rack, set);
  return (barKg) => {
    const loaded = group.blocks.map(({ shareOfAim }) =>
      plates({ targetKg: barKg * shareOfAim, ...rack.gear }),
    );
    const efforts = sessionEffort(
      assembled.task,
      assembled.tiring,
      rack.gear,
      set,
      group.blocks.map(({ sets, reps, restSeconds }, i) => ({
        barKg: loaded[i]!.loadedKg,
        sets,
        reps,
        restS: restSeconds,
      })),
    );
    return {
      barKg,
      blocks: loaded.map((one, i) => {
        const effort = efforts?.[i] ?? null;
        const hoped = effort === null ? null : expected(one.loadedKg, effort, group.blocks[i]!);
        return {
          loaded: one,
          effort,
          expected: hoped,
        };
      }),
    };
  };
}

/** Chance that every rep of the day's blocks is made, by the lifter's log; null without one: a guess lightens no bar. */
export function chanceOfDay({ blocks }: PlannedWork): number | null {
  const expected = blocks.at(-1)?.expected;
  return expected?.goesBy === 'log' ? expected.chanceAllReps : null;
}

/**
 * The heaviest loadable work, from what was asked down, whose reps are all made with at least this chance; what was asked
 * where it is likely enough, where nothing is known of the chance, or where no bar down to six tenths of it would do.
 */
export function lightenedTo(
  leastChance: number,
  asked: PlannedWork,
  workAt: (barKg: number) => PlannedWork,
  loadableKg: (targetKg: number) => number,
): PlannedWork {
  const likely = (work: PlannedWork) => (chanceOfDay(work) ?? 1) >= leastChance;
  if (likely(asked)) return asked;
  let low = loadableKg(LIGHTEST_SHARE * asked.barKg);
  let found = workAt(low);
  if (!likely(found)) return asked;
  let high = asked.barKg;
  // Halving down to neighbouring loadable bars.
  for (;;) {
    const middle = loadableKg((low + high) / 2);
    if (middle <= low || middle >= high) return found;
    const work = workAt(middle);
    if (likely(work)) {
      low = middle;
      found = work;
    } else high = middle;
  }
}
