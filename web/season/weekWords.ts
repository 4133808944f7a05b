import { weekSentences } from '#contract/season/weekSentences.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { awayOf, holdsIn } from './seasonRows.ts';

/** One week of one lifter in a line, as the picture reads it: "Ana, week of Mon 4 Jan. Speed waves, week 2: ...". */
export function weekWords(season: Pick<SeasonView, 'method'>, of: LifterSeason, at: number): string {
  const { lifter, plan, restrictions } = of;
  const week = plan.weeks[at];
  if (week === undefined) return `${lifter.name}: nothing is planned here.`;
  const [phase] = weekSentences(season.method, plan, at);
  const away = awayOf(week);
  const why = [...new Set(week.days.flatMap(({ closed }) => (closed === null ? [] : [closed])))].join(', ');
  const restricted = [
    ...new Set(
      restrictions.filter((one) => holdsIn(one, week.monday, null)).map(({ lift }) => liftWord(lift)),
    ),
  ];
  return [
    `${lifter.name}, week of ${shortDate(week.monday)}.`,
    phase,
    ...week.meets.map((meet) => `${plan.meets[meet]!.title} on ${shortDate(plan.meets[meet]!.date)}.`),
    ...(away === null ? [] : [`${away === 'all' ? 'No training' : 'Some days without training'}: ${why}.`]),
    ...(restricted.length === 0 ? [] : [`Restricted in the ${restricted.join(' and the ')}.`]),
  ].join(' ');
}
