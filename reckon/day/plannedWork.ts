import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { plates } from '#core/day/plates.ts';
import { type BlockEffort, sessionEffort } from '#core/day/sessionEffort.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';
import { expectedOf } from './expectedOf.ts';

/** A block with one bar for the aim: what is loaded and how it goes. */
export interface LoadedBlock {
  loaded: ReturnType<typeof plates>;
  effort: BlockEffort | null;
}

/** The blocks of a group with one bar for the aim, and what is to be expected of them. */
export interface PlannedWork {
  barKg: number;
  blocks: (LoadedBlock & { expected: PlanBlock['expected'] })[];
}

/** A bar is lightened no further than to this share of what was asked. */
const LIGHTEST_SHARE = 0.6;

/** Loads the blocks for any bar of the aim and works out how they go. */
export function loadedWith(
  group: Group,
  { task, tiring }: Pick<AssembledPlace, 'task' | 'tiring'>,
  { gear }: Pick<AssembledRack, 'gear'>,
  set: GearSet,
): (barKg: number) => LoadedBlock[] {
  return (barKg) => {
    const loaded = group.blocks.map(({ shareOfAim }) => plates({ targetKg: barKg * shareOfAim, ...gear }));
    const blocks = group.blocks.map(({ sets, reps, restSeconds }, i) => ({
      barKg: loaded[i]!.loadedKg,
      sets,
      reps,
      restS: restSeconds,
    }));
    const efforts = sessionEffort(task, tiring, gear, set, blocks);
    return loaded.map((one, i) => ({ loaded: one, effort: efforts?.[i] ?? null }));
  };
}

/** The same with what is to be expected, which takes far longer. */
export function workWith(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  set: GearSet,
): (barKg: number) => PlannedWork {
  const expected = expectedOf(records, group, place, assembled, rack, set);
  const blocksAt = loadedWith(group, assembled, rack, set);
  return (barKg) => ({
    barKg,
    blocks: blocksAt(barKg).map(({ loaded, effort }, i) => ({
      loaded,
      effort,
      expected: effort === null ? null : expected(loaded.loadedKg, effort, group.blocks[i]!),
    })),
  });
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
