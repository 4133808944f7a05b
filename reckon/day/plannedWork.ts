import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { lightened } from '#core/day/lightened.ts';
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

/** The heaviest loadable work down from what was asked whose reps are all made with at least this chance, where anything is known of it. */
export function lightenedTo(
  leastChance: number,
  asked: PlannedWork,
  workAt: (barKg: number) => PlannedWork,
  loadableKg: (targetKg: number) => number,
): PlannedWork {
  return lightened(asked, workAt, loadableKg, (work) => (chanceOfDay(work) ?? 1) >= leastChance);
}
