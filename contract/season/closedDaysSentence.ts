import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';

/** Training days that fall out for one reason, together: "Mon 28 Dec to Sat 2 Jan: 4 training days fall out, the floor is sanded." */
export function closedDaysSentence(dates: readonly string[], why: string): string {
  const [first, ...more] = dates.toSorted();
  const last = more.at(-1);
  const when = last === undefined ? shortDate(first!) : `${shortDate(first!)} to ${shortDate(last)}`;
  const falls = dates.length === 1 ? 'falls' : 'fall';
  return `${when}: ${counted(dates.length, 'training day')} ${falls} out, ${why}. Move by hand what matters.`;
}
