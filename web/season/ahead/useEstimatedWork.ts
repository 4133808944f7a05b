import { useMemo } from 'react';
import type { GroupOfLifter, WeekOfLifter } from '#contract/season/seasonPlan.ts';
import type { SessionWork } from '#contract/season/sessionWork.ts';
import { workAhead } from '#reckon/season/workAhead.ts';
import { useClub } from '#web/api/useClub.ts';

/** What each group of a week comes to for a lifter by its shares alone; null where nothing can be said. */
export function useEstimatedWork(
  lifterId: string,
  week: WeekOfLifter,
  today: string,
): ReadonlyMap<GroupOfLifter, SessionWork | null> {
  const club = useClub();
  return useMemo(
    () =>
      new Map(
        week.days.flatMap(({ groups }) =>
          groups.map((group) => [group, workAhead(club, lifterId, group, today)] as const),
        ),
      ),
    [club, lifterId, week, today],
  );
}
