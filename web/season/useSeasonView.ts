import { useMemo } from 'react';
import { clubSeason } from '#reckon/season/clubSeason.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { localToday } from '#web/parts/localToday.ts';
import type { SeasonView } from './SeasonView.ts';
import { viewOfSeason } from './viewOfSeason.ts';

/** A season as its pages show it, worked out here from the records as they are now: what is changed is seen at once. */
export function useSeasonView(seasonId: string): SeasonView {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  return useMemo(() => viewOfSeason(club, clubSeason(club, seasonId, today), today), [club, seasonId, today]);
}
