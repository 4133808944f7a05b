import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { isoWeekday, mondayOf } from '#contract/calendar/isoWeek.ts';
import type { Method, PhaseOfMethod } from '#contract/records/method.ts';
import type { SeasonAsk, SeasonWarning } from '#contract/season/seasonPlan.ts';
import { layPhases } from '#core/season/layPhases.ts';
import type { WeekAt } from './dayAim.ts';

export interface WeekLaid {
  monday: string;
  /** Null: no phase took it. */
  in: ({ phase: PhaseOfMethod; weekOfPhase: number } & WeekAt) | null;
  /** Meets of this calendar week, by their place in what was asked. */
  meets: number[];
  /** The days of its phase that the first day and the meets leave. */
  days: { date: string; day: PhaseOfMethod['days'][number] }[];
}

export interface SeasonLaid {
  weeks: WeekLaid[];
  warnings: SeasonWarning[];
}

type Asked = Pick<SeasonAsk, 'from' | 'meets'>;

/**
 * The weeks from the first day to the last meet, each with its phase, laid backwards from each meet. The last week before a meet is the one that holds
 * the third day before it: a meet in the middle of a week leaves that week no training. Between two meets lies what was asked for
 * after the first one.
 */
export function layWeeks(method: Method, { from, meets }: Asked): SeasonLaid {
  const first = dayNumber(mondayOf(from));
  const weekOf = (date: string) => Math.floor((dayNumber(date) - first) / 7);
  const meetWeeks = meets.map(({ date }) => weekOf(date));
  const weeks: WeekLaid[] = Array.from({ length: meetWeeks.at(-1)! + 1 }, (_, week) => ({
    monday: dateOfDay(first + 7 * week),
    in: null,
    meets: meetWeeks.flatMap((of, at) => (of === week ? [at] : [])),
    days: [],
  }));
  const warnings: SeasonWarning[] = [];
  let begins = 0;
  for (const [at, { title, date }] of meets.entries()) {
    const ends = lastWeekBefore(date, first) + 1;
    const phases = method.phases.filter(({ onlyAfterMeet }) => at > 0 || !onlyAfterMeet);
    const laid = layPhases(phases, Math.max(0, ends - begins));
    for (const { phase: index, week, weeks: length } of laid.phases) {
      const phase = phases[index]!;
      for (let w = 0; w < length; w++)
        weeks[begins + week + w]!.in = {
          phase,
          weekOfPhase: w,
          wave: Math.floor(w / phase.waveWeeks),
          weekOfWave: w % phase.waveWeeks,
        };
    }
    const monday = weeks[Math.min(begins, weeks.length - 1)]!.monday;
    if (laid.openWeeks > 0) warnings.push({ code: 'openWeeks', weeks: laid.openWeeks, monday });
    for (const index of laid.cut) {
      const { title: phase, leastWeeks } = phases[index]!;
      const given = laid.phases.find((one) => one.phase === index)?.weeks ?? 0;
      warnings.push({ code: 'phaseCut', phase, weeks: given, leastWeeks, meet: title });
    }
    begins = Math.max(begins, ends);
  }
  for (const week of weeks) week.days = daysLeft(week, { from, meets });
  return { weeks, warnings };
}

function daysLeft({ monday, in: within, meets: ofWeek }: WeekLaid, { from, meets }: Asked): WeekLaid['days'] {
  const first = dayNumber(monday);
  const meetsOfWeek = ofWeek.map((meet) => meets[meet]!);
  return (within?.phase.days ?? [])
    .map((day) => ({ date: dateOfDay(first + day.weekday - 1), day }))
    .filter(({ date }) => date >= from && !isHeldFree(date, meetsOfWeek));
}

/** Whether one of the meets of its week leaves a day without training: its own, those after it, those since the last week before it. */
function isHeldFree(date: string, meetsOfWeek: SeasonAsk['meets']): boolean {
  return meetsOfWeek.some((meet) => date >= meet.date || isoWeekday(meet.date) <= DAYS_BEFORE);
}

const DAYS_BEFORE = 3;

function lastWeekBefore(meet: string, first: number): number {
  return Math.floor((dayNumber(meet) - DAYS_BEFORE - first) / 7);
}
