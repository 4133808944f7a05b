import type { DayAsked } from '#contract/records/method.ts';
import { freeTitle } from './titledList.ts';

/** The first day of the week, after `from` and around, on which nobody trains yet; null: all seven are taken. */
export function freeWeekday(days: readonly Pick<DayAsked, 'weekday'>[], from = 0): number | null {
  const inTurn = Array.from({ length: 7 }, (_, at) => ((from + at) % 7) + 1);
  return inTurn.find((weekday) => days.every((day) => day.weekday !== weekday)) ?? null;
}

/** A day of the list on another day of the week; a day that is there already changes places with it. */
export function onWeekday(days: readonly DayAsked[], at: number, weekday: number): DayAsked[] {
  const before = days[at]!.weekday;
  return inOrder(
    days.map((day, place) => {
      if (place === at) return { ...day, weekday };
      return day.weekday === weekday ? { ...day, weekday: before } : day;
    }),
  );
}

/** The days with a copy of one of them on the next free day of the week, under a title of its own; `weekday` must be free. */
export function withDayOn(days: readonly DayAsked[], day: DayAsked, weekday: number): DayAsked[] {
  return inOrder([...days, { ...day, weekday, title: freeTitle(days, day.title) }]);
}

/** A day on which nothing is asked for yet. */
export const bareDay: DayAsked = {
  weekday: 1,
  title: 'Training',
  groups: [],
  accessories: [],
  sleds: [],
  holds: [],
};

function inOrder(days: readonly DayAsked[]): DayAsked[] {
  return days.toSorted((a, b) => a.weekday - b.weekday);
}
