import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { counted } from '#contract/words/counted.ts';
import type { RecentWork } from './recentWork.ts';

/** What was the same in at least this share of the weeks is what the body is used to (judgement). */
const MOST_WEEKS = 0.5;
/** More names than this in one sentence are not read. */
const NAMED = 3;
/** Work that differs by less than this share is about the same (judgement). */
const ABOUT = 0.2;

/**
 * A stall, and what changed and what did not in its weeks, one sentence each. `setupText` says a set's setup as the
 * reader is used to: "box 36 cm with 13-A and 29-B (doubled, low)".
 */
export function stallSentences(
  stall: StrengthEstimate['rise'][number],
  work: RecentWork,
  setupText: (set: LoggedSet) => string,
): string[] {
  const percent = Math.round(stall.probability * 100);
  const chance = percent < 1 ? 'less than 1' : `${percent}`;
  return [
    `Strength has probably not risen in the last ${counted(stall.weeks, 'week')}: the chance that it has, by 1 % or more, is ${chance} %.`,
    ...sameAllAlong(work, setupText),
    ...whatIsNew(work, setupText),
    ...howMuch(work),
  ];
}

function sameAllAlong({ used, weeks }: RecentWork, setupText: (set: LoggedSet) => string): string[] {
  const steady = used.filter(({ inWeeks, isNew }) => !isNew && inWeeks >= MOST_WEEKS * weeks);
  if (steady.length === 0) return [];
  const texts = steady.map(
    ({ example, inWeeks }, i) =>
      `${setupText(example)}, in ${inWeeks}${i === 0 ? ` of the ${weeks} weeks` : ''}`,
  );
  return [
    `The same as before: ${named(texts)}.`,
    'A lifter gets used to what stays the same; another start or other bands may help.',
  ];
}

function whatIsNew({ used, dropped }: RecentWork, setupText: (set: LoggedSet) => string): string[] {
  const fresh = used.filter(({ isNew }) => isNew).map(({ example }) => setupText(example));
  const gone = dropped.map(setupText);
  if (fresh.length === 0 && gone.length === 0)
    return used.length === 0 ? [] : ['No setup changed compared with the weeks before.'];
  return [
    ...(fresh.length === 0 ? [] : [`New in these weeks: ${named(fresh)}.`]),
    ...(gone.length === 0 ? [] : [`No longer done: ${named(gone)}.`]),
  ];
}

function howMuch({ sets, setsBefore, weeks }: RecentWork): string[] {
  if (setsBefore === 0) return [];
  const share = sets / setsBefore - 1;
  const against = `${counted(sets, 'set')} of the lift, ${setsBefore} in the ${counted(weeks, 'week')} before`;
  if (Math.abs(share) <= ABOUT) return [`About as much was done as before: ${against}.`];
  return [`${share > 0 ? 'More' : 'Less'} was done than before: ${against}.`];
}

/** "a; b; c and 4 more" */
function named(texts: readonly string[]): string {
  const shown = texts.slice(0, NAMED).join('; ');
  return texts.length > NAMED ? `${shown} and ${texts.length - NAMED} more` : shown;
}
