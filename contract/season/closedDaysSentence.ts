import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';

/** Training days that do not take place for one reason, together: "Mon 28 Dec to Sat 2 Jan: no training on 4 planned days, the floor is sanded." */
export function closedDaysSentence(dates: readonly string[], why: string): string {
  const [first, ...more] = dates.toSorted();
  const last = more.at(-1);
  const when = last === undefined ? shortDate(first!) : `${shortDate(first!)} to ${shortDate(last)}`;
  return `${when}: no training on ${counted(dates.length, 'planned day')}, ${why}. Move by hand what matters.`;
}
