import { isSame } from '#contract/changes/mergeFields.ts';
import { lift as anyLift } from '#contract/records/lift.ts';
import type { AskedPlan, ClubSeason } from '#contract/season/clubSeason.ts';
import type { DifferenceReason } from '#contract/season/planDifferences.ts';
import type { SeasonAsk, SetByHand } from '#contract/season/seasonPlan.ts';
import { groupsFor } from './groupsFor.ts';
import { planOf, type Side } from './Side.ts';

/** What was asked of one lifter otherwise than when the plan was taken, as far as it tells of days from `from` on. */
export function differenceReasons(before: Side, now: Side, from: string): DifferenceReason[] {
  const [was, is] = [planOf(before), planOf(now)];
  return [
    ...ofMeets(was?.meets ?? [], is?.meets ?? []),
    ...ofClosed(was?.closed ?? [], is?.closed ?? [], from),
    ...ofHeld(was?.held ?? [], is?.held ?? [], from),
    ...ofEquipment(before, now),
    ...ofClasses(before, now, from),
    ...ofHand(was?.byHand ?? [], is?.byHand ?? [], from),
    ...ofOwnBoxes(before, now),
    ...ofStrength(before, now),
  ];
}

/** What was asked otherwise of everybody in the season. */
export function ofSeason(was: ClubSeason, is: ClubSeason): DifferenceReason[] {
  return [
    ...(isSame(was.method, is.method)
      ? []
      : [{ code: 'method' as const, before: versioned(was.method), now: versioned(is.method) }]),
    ...(was.fromOn === is.fromOn ? [] : [{ code: 'firstDay' as const, before: was.fromOn, now: is.fromOn }]),
  ];
}

/** A meet of the same title on another day has moved. */
function ofMeets(was: SeasonAsk['meets'], is: SeasonAsk['meets']): DifferenceReason[] {
  const gone = without(was, is);
  const fresh = without(is, was);
  const movedTo = (title: string) => fresh.find((meet) => meet.title === title);
  const isMoved = (title: string) => movedTo(title) && gone.some((meet) => meet.title === title);
  return [
    ...gone.map((meet): DifferenceReason => {
      const to = movedTo(meet.title);
      return to
        ? { code: 'meetMoved', title: meet.title, before: meet.date, now: to.date }
        : { code: 'meetGone', meet };
    }),
    ...fresh.flatMap((meet): DifferenceReason[] => (isMoved(meet.title) ? [] : [{ code: 'meetNew', meet }])),
  ];
}

function ofClosed(was: SeasonAsk['closed'], is: SeasonAsk['closed'], from: string): DifferenceReason[] {
  const isAhead = ({ until }: SeasonAsk['closed'][number]) => until >= from;
  return [
    ...without(is, was)
      .filter(isAhead)
      .map((closed) => ({ code: 'closedNew' as const, closed })),
    ...without(was, is)
      .filter(isAhead)
      .map((closed) => ({ code: 'closedGone' as const, closed })),
  ];
}

function ofHeld(was: AskedPlan['held'], is: AskedPlan['held'], from: string): DifferenceReason[] {
  const isAhead = ({ until }: AskedPlan['held'][number]) => until === null || until >= from;
  return [
    ...without(is, was)
      .filter(isAhead)
      .map((held) => ({ code: 'heldNew' as const, held })),
    ...without(was, is)
      .filter(isAhead)
      .map((held) => ({ code: 'heldGone' as const, held })),
  ];
}

/** Told where the plan that was taken knew of it. */
export function ofEquipment({ lifter: was }: Side, { lifter: is }: Side): DifferenceReason[] {
  return was.equipment === undefined || is.equipment === undefined || was.equipment === is.equipment
    ? []
    : [{ code: 'equipment', before: was.equipment, now: is.equipment }];
}

/** At meets that are still trained for; in a plan of before anybody could say it, nobody had. */
export function ofClasses(before: Side, now: Side, from: string): DifferenceReason[] {
  const [was, is] = [before.lifter.classes ?? [], now.lifter.classes ?? []];
  const gone = was.filter(({ meetId }) => is.every((one) => one.meetId !== meetId));
  const staysIn = new Set(planOf(now)?.meets.map(({ title }) => title));
  return [
    ...gone
      .filter(({ title, date }) => date >= from && staysIn.has(title))
      .map(({ title, upToKg }) => ({ code: 'class' as const, title, before: { upToKg }, now: null })),
    ...is.flatMap(({ meetId, title, date, upToKg }): DifferenceReason[] => {
      const old = was.find((one) => one.meetId === meetId);
      if (date < from || old?.upToKg === upToKg) return [];
      return [{ code: 'class', title, before: old ? { upToKg: old.upToKg } : null, now: { upToKg } }];
    }),
  ];
}

function ofHand(was: readonly SetByHand[], is: readonly SetByHand[], from: string): DifferenceReason[] {
  const changed = [...without(was, is), ...without(is, was)].filter(({ date }) => date >= from);
  const cells = new Map(changed.map(({ date, askedId }) => [`${date} ${askedId}`, { date, askedId }]));
  return [...cells.entries()]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([, cell]) => ({ code: 'byHand' as const, ...cell }));
}

/** Depths that both plans ask for, each from another box. */
function ofOwnBoxes({ lifter: was }: Side, { lifter: is }: Side): DifferenceReason[] {
  return (is.ownBoxes ?? []).flatMap(({ aboveParallelM, heightM: nowM }): DifferenceReason[] => {
    const old = was.ownBoxes?.find((one) => one.aboveParallelM === aboveParallelM);
    return old === undefined || old.heightM === nowM
      ? []
      : [{ code: 'ownBox', aboveParallelM, beforeM: old.heightM, nowM }];
  });
}

/** Lifts in which the lifter's own strength leads to other groups of the plan as it is now. */
function ofStrength(before: Side, now: Side): DifferenceReason[] {
  if (isSame(before.lifter.timesBodyMass, now.lifter.timesBodyMass)) return [];
  const days = planOf(now)?.weeks.flatMap((week) => week.days) ?? [];
  return anyLift.options.flatMap((lift): DifferenceReason[] => {
    const groups = (side: Side) =>
      days.map((day) =>
        groupsFor(day, { ...now.lifter, timesBodyMass: side.lifter.timesBodyMass }).filter(
          (group) => group.lift === lift,
        ),
      );
    return isSame(groups(before), groups(now)) ? [] : [{ code: 'strength', lift }];
  });
}

/** Those of a list that another does not have. */
function without<Each>(list: readonly Each[], other: readonly Each[]): Each[] {
  return list.filter((each) => !other.some((one) => isSame(one, each)));
}

function versioned({ title, version }: Side['season']['method']) {
  return { title, version };
}
