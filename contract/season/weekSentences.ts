import type { Method } from '#contract/records/method.ts';
import { counted } from '#contract/words/counted.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import type { PlannedGroup, PlannedWeek, SeasonPlan } from './seasonPlan.ts';

type Planned = Pick<SeasonPlan, 'weeks' | 'meets'>;

/** A week in words: what it is for, what changes against the last one, and the meet. */
export function weekSentences(
  { phases }: Pick<Method, 'phases'>,
  { weeks, meets }: Planned,
  at: number,
): string[] {
  const week = weeks[at]!;
  const phase = phases.find(({ id }) => id === week.phaseId);
  return [
    ...(phase ? [`${phase.title}, ${whichWeek(week)}.`] : ['This week belongs to no phase.']),
    ...(phase && week.weekOfPhase === 1 ? [phase.goal] : changes(weeks[at - 1], week)),
    ...week.meets.map((meet) => `${meets[meet]!.title} on ${longDate(meets[meet]!.date)}.`),
  ];
}

function whichWeek({ weekOfPhase, wave, weekOfWave }: PlannedWeek): string {
  return weekOfPhase === weekOfWave
    ? `week ${weekOfPhase}`
    : `week ${weekOfPhase}: wave ${wave}, week ${weekOfWave}`;
}

/** Of the same work in the week before; a new wave says why it steps. */
function changes(before: PlannedWeek | undefined, week: PlannedWeek): string[] {
  if (before === undefined) return [];
  const told = groupsOf(week).flatMap((group) => {
    const last = groupsOf(before).find(({ askedId }) => askedId === group.askedId);
    return last ? groupChanges(last, group) : [];
  });
  if (week.weekOfWave === 1 && before.phaseId === week.phaseId)
    return [
      'A new wave: the bar goes back and the bands step up, so that the body meets something it is not used to.',
      ...told,
    ];
  return told.length === 0 ? ['The same as the week before.'] : told;
}

function groupsOf({ days }: PlannedWeek): PlannedGroup[] {
  return days.flatMap(({ groups }) => groups.filter(({ leastTimesBodyMass }) => leastTimesBodyMass === null));
}

function groupChanges(before: PlannedGroup, now: PlannedGroup): string[] {
  const changed = [
    ...difference('bands', before.bandShare, now.bandShare),
    ...difference('at lockout', before.lockoutShare, now.lockoutShare),
    ...(lifts(before) === lifts(now) ? [] : [`${counted(lifts(now), 'lift')} after ${lifts(before)}`]),
  ];
  return changed.length === 0 ? [] : [`${now.title}: ${changed.join(', ')}.`];
}

function difference(what: string, before: number | null, now: number | null): string[] {
  if (before === null || now === null || before === now) return [];
  return [`${what} ${percentToTenth(now)} after ${percentToTenth(before)}`];
}

function lifts({ blocks }: PlannedGroup): number {
  return blocks.reduce((sum, { sets, reps }) => sum + sets * reps, 0);
}
