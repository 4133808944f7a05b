import type { PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { Group } from '#contract/records/day.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Tell } from '#contract/words/doing.ts';
import { allocate } from '#core/day/allocate.ts';
import { type Clock, timeSpent } from '#core/day/timeSpent.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { assembleGroup } from './assembleGroup.ts';
import { type AssembledRack, searchRulesOf } from './assembleRackGear.ts';
import { boxesOfGroup } from './boxesOfGroup.ts';
import { describePlace } from './describePlace.ts';
import { rankGroup } from './rankGroup.ts';
import { tooFewOfIron } from './tooFewOfIron.ts';

/** The server answers while a coach waits: after this the best found so far is given, with its gap. */
const TIME_LIMIT_MS = 3000;

type Day = RecordOf<'day'>;

interface Solving {
  clock: Clock;
  tell: Tell;
  /** Nobody is proposed anything but the setup that is chosen. */
  chosenAlone: boolean;
}

/**
 * Works out one group: all its racks are in use at once and share the club's gear. Where the core cannot reckon with what they hold
 * (it throws a `RangeError`) every place has that as its problem, and the day's other groups are worked out.
 */
export function solveGroup(
  records: ClubRecords,
  day: Day,
  group: Group,
  estimates: readonly StrengthEstimate[],
  how: Solving,
): PlanGroup {
  try {
    return solved(records, day, group, estimates, how);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return unsolved(records, group, error.message);
  }
}

function solved(
  records: ClubRecords,
  day: Day,
  group: Group,
  estimates: readonly StrengthEstimate[],
  { clock, tell, chosenAlone }: Solving,
): PlanGroup {
  const { found, racks } = assembleGroup(records, day.date, group, estimates);
  const spent = timeSpent(clock, TIME_LIMIT_MS);
  const count = group.places.length;
  const ranked = rankGroup(found, racks, searchRulesOf(records, group), spent, (at) =>
    tell(at, 2 * count, { code: 'ranking', at: at + 1, of: count }),
  );
  tell(count, 2 * count, { code: 'sharing', group: group.title });
  const lifters = ranked.flatMap((one) => ('lifter' in one ? [one.lifter] : []));
  const allocation =
    lifters.length === 0
      ? null
      : allocate({
          racks: racks.map(({ gear }) => gear),
          lifters,
          bandChangeMinutes: records.club[0]?.bandChangeMinutes ?? 1,
          oneSetPull: day.oneSetPull,
          outOfTime: () => spent() > 1,
        });
  const boxes = boxesOfGroup(records, group);
  const seatOf = seatsOf(records, group, boxes);
  const places = ranked.map((one): PlanPlace => {
    const { place } = one;
    const seat = seatOf(place);
    if ('problem' in one) return { ...seat, problem: one.problem, solved: null };
    const described = describePlace(
      records,
      day.date,
      group,
      place,
      one.assembled,
      racks[one.lifter.rack]!,
      allocation!.chosen[lifters.indexOf(one.lifter)]!,
      { ranked: one.lifter.ranking, chosenAlone },
    );
    return { ...seat, problem: null, solved: described };
  });
  return {
    ...headOf(group),
    places,
    racks: racks.map((assembled, rack) =>
      planRack(assembled, allocation?.racks[rack] ?? { changes: 0, handlingMinutes: 0 }),
    ),
    totals: {
      misfit: allocation?.misfit ?? 0,
      handlingMinutes: allocation?.racks.reduce((sum, rack) => sum + rack.handlingMinutes, 0) ?? 0,
      total: allocation?.total ?? 0,
    },
    proof: allocation?.proof ?? null,
    cautions: [
      ...(allocation?.clashes ?? []).map(
        ({ id, sort }): PlanCaution => ({ code: 'clash', sort, gearId: id }),
      ),
      ...tooFewOfIron(
        records,
        records.rack.filter(({ id }) => racks.some(({ rack }) => rack.id === id)),
      ),
      ...boxes.tooFew,
    ],
  };
}

function unsolved(records: ClubRecords, group: Group, reason: string): PlanGroup {
  const problem = `Nothing can be worked out for this group (${reason}): check heights, bests, gear and the group's aim.`;
  const seatOf = seatsOf(records, group, boxesOfGroup(records, group));
  return {
    ...headOf(group),
    places: group.places.map((place) => ({ ...seatOf(place), problem, solved: null })),
    racks: [],
    totals: { misfit: 0, handlingMinutes: 0, total: 0 },
    proof: null,
    cautions: [],
  };
}

/** What a group's plan repeats of what was asked. */
function headOf({ id: groupId, title, work, lift, aim }: Group) {
  return { groupId, title, work, lift, aim };
}

/** What is known of a place before anything is worked out; to be asked in lifting order. */
function seatsOf(records: ClubRecords, group: Group, boxes: ReturnType<typeof boxesOfGroup>) {
  const turns = new Map<string, number>();
  return (place: Group['places'][number]) => {
    const turn = (turns.get(place.rackId) ?? 0) + 1;
    turns.set(place.rackId, turn);
    return {
      lifterId: place.lifterId,
      name: recordById(records, 'lifter', place.lifterId).name,
      rackId: place.rackId,
      turn,
      start: startOf(group, place),
      moreShare: place.moreShare,
      boxStack: boxes.stackOf(place),
    };
  };
}

function planRack(
  { rack, barLabel, discs }: AssembledRack,
  work: { changes: number; handlingMinutes: number },
) {
  return { rackId: rack.id, label: rack.label, bar: barLabel, ...work, discs };
}
