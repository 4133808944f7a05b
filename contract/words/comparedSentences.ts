import type { ComparisonReport, PercentRange } from '#contract/comparison/comparisonReport.ts';
import { counted } from './counted.ts';
import { dateText } from './dateText.ts';
import { verdictOf } from './evidenceSentence.ts';
import { percentToTenth } from './percent.ts';

/** Below this many lifters of a way a comparison is a small one (judgement). */
const FEW = 10;

/** What a comparison of two ways showed, as a coach says it; where it cannot tell, it says that. */
export function comparedSentences(report: ComparisonReport): string[] {
  return [answer(report), ...few(report), ...notOver(report), ...leftEarly(report)];
}

function answer({ ways, difference_percent, startsOn, toldTo }: ComparisonReport): string {
  const [first, second] = ways as [Side, Side];
  if (difference_percent === null)
    return `Too little to say: it takes 3 lifters of each way with tests on different days; so far there are ${first.telling} of "${first.way}" and ${second.telling} of "${second.way}".`;
  const time = `from ${dateText(startsOn)} to ${dateText(toldTo)}`;
  const verdict = verdictOf({ effect: difference_percent });
  if (verdict === 'cannotTell')
    return `The comparison cannot tell the two ways apart: ${time}, anything from ${leaning(difference_percent.low95, first, second)} to ${leaning(difference_percent.high95, first, second)} would fit what was lifted.`;
  const [more, less] = difference_percent.value > 0 ? [second, first] : [first, second];
  const [low, high] = sizes(difference_percent);
  const by = percent(Math.abs(difference_percent.value));
  if (verdict === 'leans')
    return `"${more.way}" probably gained more than "${less.way}", by about ${by} of the load ${time}, but no difference at all is not ruled out: anything from ${leaning(difference_percent.low95, first, second)} to ${leaning(difference_percent.high95, first, second)} would fit.`;
  return `"${more.way}" gained ${by} of the load more than "${less.way}" ${time}; the truth lies between ${low} and ${high} 95 % of the time.`;
}

type Side = ComparisonReport['ways'][number];

/** "1.2 % more by early". */
function leaning(value: number, first: Side, second: Side): string {
  return `${percent(Math.abs(value))} more by "${(value > 0 ? second : first).way}"`;
}

function sizes({ low95, high95 }: PercentRange): [string, string] {
  const both = [Math.abs(low95), Math.abs(high95)].sort((a, b) => a - b);
  return [percent(both[0]!), percent(both[1]!)];
}

function few({ ways, difference_percent }: ComparisonReport): string[] {
  const telling = ways.map((side) => side.telling);
  if (difference_percent === null || Math.min(...telling) >= FEW) return [];
  return [
    `These are few lifters, ${telling[0]} and ${telling[1]}: one more or less could change the answer.`,
  ];
}

function notOver({ lastTestOn, toldTo, endsOn, difference_percent }: ComparisonReport): string[] {
  if (difference_percent === null || lastTestOn === null || toldTo === endsOn) return [];
  return [
    `It is not over: the newest test is from ${dateText(lastTestOn)}. If you stop as soon as the answer pleases you, chance looks like a difference.`,
  ];
}

function leftEarly({ leftEarly: left }: ComparisonReport): string[] {
  if (left.length === 0) return [];
  const named = left.map(({ name, way, takenOut, lastOn }) => {
    const last = lastOn === null ? 'no test' : `last counted ${dateText(lastOn)}`;
    return `${name} ("${way}", ${takenOut ? 'taken out, ' : ''}${last})`;
  });
  return [
    `${counted(left.length, 'lifter')} left before the end: ${named.join('; ')}. They count by the way drawn, up to then; those who leave are seldom like those who stay.`,
  ];
}

function percent(value: number): string {
  return percentToTenth(value / 100);
}
