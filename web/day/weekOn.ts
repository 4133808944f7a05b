import { raisedAim } from '#contract/day/raisedAim.ts';
import type { Day, Group } from '#contract/records/day.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { everybodyBack } from './here/whoIsHere.ts';

/**
 * The same day a week later, its title counted on, every percentage of each group higher by what `moreOf` says of it (0.05: from 50 to
 * 55 %). A zone of speed stays as it is. Where something is more, bars that were set by hand are worked out again; bands set by hand stay.
 */
export function weekOn(
  { date, title, groups, oneSetPull, note }: Day,
  moreOf: (groupId: string) => number,
): Omit<Day, 'id'> {
  return {
    oneSetPull,
    note,
    date: daysLater(date, 7),
    title: countedOn(title),
    groups: groups.map((group) => raised(everybodyBack(group), moreOf(group.id))),
  };
}

function raised(group: Group, more: number): Group {
  if (more === 0) return group;
  const places = group.places.map((place) =>
    place.byCoach === null ? place : { ...place, byCoach: { ...place.byCoach, barKg: null } },
  );
  return { ...group, aim: raisedAim(group.aim, more), places };
}

const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
];

/** The last number of a title, or its last ordinal word, one on: "Week 3" becomes "Week 4", "third wave" "fourth wave". */
function countedOn(title: string): string {
  const counted = title.match(
    new RegExp(`\\b(?:\\d{1,2}|${ordinals.join('|')})\\b(?!.*\\b\\d{1,2}\\b)`, 'i'),
  );
  if (counted === null) return title;
  const [word] = counted;
  const at = ordinals.indexOf(word.toLowerCase());
  const next = at < 0 ? String(Number(word) + 1) : ordinals[at + 1];
  if (next === undefined) return title;
  const written = /^[A-Z]/.test(word) ? next.charAt(0).toUpperCase() + next.slice(1) : next;
  return title.slice(0, counted.index) + written + title.slice(counted.index! + word.length);
}
