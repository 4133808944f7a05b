import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ComparisonPlan } from './comparisonPlan.ts';
import { earliestDate, latestDate } from './dateRange.ts';

/** What cannot be in a drawn plan, as what is allowed instead: "it must ..."; null: nothing is wrong. */
export function planProblem(plan: ComparisonPlan): string | null {
  const { ways, weeks, startsOn, endsOn, testOn, drawn, notDrawn } = plan;
  if (ways[0] === ways[1]) return 'it must have two ways with different names';
  if (weeks < LEAST_WEEKS || weeks > MOST_WEEKS) return `it must last ${LEAST_WEEKS} to ${MOST_WEEKS} weeks`;
  if (endsOn !== dateOfDay(dayNumber(startsOn) + 7 * weeks))
    return `it must end ${weeks} weeks after ${startsOn}`;
  if (testOn.some((on) => on < startsOn || on > endsOn))
    return `it must have its tests from ${startsOn} to ${endsOn}`;
  const named = [...drawn, ...notDrawn];
  const twice = named.find((one, i) => named.findIndex(({ lifterId }) => lifterId === one.lifterId) !== i);
  if (twice) return `it must name ${twice.name} once only`;
  const astray = drawn.find(({ way }) => !ways.includes(way));
  if (astray) return `it must give ${astray.name} one of its two ways`;
  for (const pair of new Set(drawn.flatMap((one) => one.pair ?? []))) {
    const both = drawn.filter((one) => one.pair === pair);
    if (both.length !== 2 || both[0]!.way === both[1]!.way)
      return `it must have two lifters in pair ${pair}, one of each way`;
  }
  return null;
}

/**
 * What is allowed of a first day that lies too far off, itself or the last day that follows from it: "it must ...", with dates as `spell` writes them;
 * null: nothing is wrong.
 */
export function startProblem(
  startsOn: string,
  weeks: number,
  spell = (date: string): string => date,
): string | null {
  if (startsOn < earliestDate) return `it must be no earlier than ${spell(earliestDate)}`;
  const latest = dateOfDay(dayNumber(latestDate) - 7 * weeks);
  return startsOn > latest ? `it must be no later than ${spell(latest)}, to last ${weeks} weeks` : null;
}

/** The least and the most that a comparison lasts. */
export const LEAST_WEEKS = 4;
export const MOST_WEEKS = 104;
