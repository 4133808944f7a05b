import { shortDate } from '#contract/words/dayWords.ts';

/** Whence the figures of the days ahead come; `last`: the last day that is worked out, null: none is. */
export function aheadSentence(
  days: readonly { date: string; closed: string | null }[],
  today: string,
  last: string | null,
): string | null {
  const ahead = days.filter(({ date, closed }) => date >= today && closed === null);
  const near = ahead.filter(({ date }) => last !== null && date <= last);
  if (ahead.length === 0) return null;
  const worked = `worked out to bar and bands by what is known today, with the gear of the club; the Day screen works them out again`;
  const range = `ranges, which are right 80 times in 100, as far as can be told today`;
  if (near.length === 0) return `Kilograms are ${range}.`;
  return near.length === ahead.length
    ? `These days are ${worked}.`
    : `Days up to ${shortDate(last!)} are ${worked}; later ones are ${range}.`;
}
