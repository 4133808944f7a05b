import { farSentence } from '#contract/season/farSentence.ts';
import type { NearDay, NearWork } from '#contract/season/nearDay.ts';
import type { DayOfLifter, GroupOfLifter, WeekOfLifter } from '#contract/season/seasonPlan.ts';
import { useNearDays, useStrengthAhead } from '#web/api/useWeeksAhead.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { SeasonView } from '../SeasonView.ts';

/** What is known today of a group of a day ahead: bar and bands, or what can be said instead. */
export type GroupAhead = { day: NearDay; work: NearWork } | { says: string };

export interface WeekAhead {
  /** Null: it is past, or there is no training. */
  of(day: Pick<DayOfLifter, 'date' | 'closed'>, group: GroupOfLifter): GroupAhead | null;
}

/** Of a plan that is only looked at. */
export const nothingAhead: WeekAhead = { of: () => null };

/** What is known today of a week of one lifter: its near days to bar and bands, the others as ranges. */
export function useWeekAhead(
  { id, today, nearUntil: last }: Pick<SeasonView, 'id' | 'today' | 'nearUntil'>,
  lifterId: string,
  { monday, days }: Pick<WeekOfLifter, 'monday' | 'days'>,
): WeekAhead {
  const { mass } = useUnits();
  const isNear = ({ date, closed }: Pick<DayOfLifter, 'date' | 'closed'>) =>
    last !== null && date >= today && date <= last && closed === null;
  const near = useNearDays(
    id,
    lifterId,
    days.filter(isNear).map(({ date }) => date),
  );
  const strength = useStrengthAhead(id, lifterId);
  return {
    of(day, group) {
      if (day.date < today || day.closed !== null) return null;
      if (isNear(day)) {
        const { error, data } = near(day.date) ?? {};
        if (error) return { says: error.message };
        return data === undefined ? { says: 'Working out bar and bands.' } : nearOf(data, group);
      }
      if (strength.error) return { says: strength.error.message };
      return strength.data ? { says: farSentence(group, monday, strength.data, mass) } : null;
    },
  };
}

function nearOf(day: NearDay | null, { askedId, title }: GroupOfLifter): GroupAhead {
  if (day === null)
    return {
      says: 'Nothing is worked out here: sets of that day are logged, or this lifter was taken out of it on the Day screen.',
    };
  const work = day.works.find((one) => one.askedId === askedId);
  if (work !== undefined) return { day, work };
  return {
    says: day.noRack.includes(title)
      ? 'No rack of the club takes this lift, so no bar can be worked out.'
      : 'On the Day screen this lifter is no longer in this group.',
  };
}
