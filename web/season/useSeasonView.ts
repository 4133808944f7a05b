import { useMemo } from 'react';
import type { Season } from '#contract/records/season.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { planSeason } from '#reckon/season/planSeason.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { localToday } from '#web/parts/localToday.ts';
import type { SeasonView } from './SeasonView.ts';

/** A season as its pages show it. */
export function useSeasonView(season: Season): SeasonView {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  return useMemo(() => {
    const method = club.method.find(({ id }) => id === season.methodId)!.methodDocument;
    const plans = new Map<string, SeasonView['lifters'][number]['plan']>();
    const gravity = gravityOf(club);
    return {
      id: season.id,
      title: season.title,
      method,
      today,
      lifters: club.seasonEntry
        .filter(({ seasonId }) => seasonId === season.id)
        .map((entry) => {
          const ask = {
            from: season.fromOn,
            meets: club.meet
              .filter(({ id }) => entry.meetIds.includes(id))
              .map(({ title, date }) => ({ title, date }))
              .sort((a, b) => a.date.localeCompare(b.date)),
            closed: club.absence
              .filter(({ lifterId }) => lifterId === null || lifterId === entry.lifterId)
              .map(({ fromOn, untilOn, why }) => ({ from: fromOn, until: untilOn, why })),
          };
          const key = JSON.stringify(ask);
          const plan = plans.get(key) ?? planSeason(method, ask, gravity);
          plans.set(key, plan);
          return {
            lifter: club.lifter.find(({ id }) => id === entry.lifterId)!,
            plan,
            restrictions: club.restriction.filter(({ lifterId }) => lifterId === entry.lifterId),
            byHandOn: club.plannedByHand
              .filter(
                (one) =>
                  one.seasonId === season.id && (one.lifterId === null || one.lifterId === entry.lifterId),
              )
              .map(({ date }) => date),
          };
        })
        .sort((a, b) => a.lifter.name.localeCompare(b.lifter.name)),
    };
  }, [club, season, today]);
}
