import { useMemo } from 'react';
import type { SeasonOffer } from '#contract/season/seasonOffer.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useSeasonOffer } from '#web/api/useSeason.ts';
import { localToday } from '#web/parts/localToday.ts';
import type { SeasonView } from './SeasonView.ts';
import { viewOfSeason } from './viewOfSeason.ts';

/** A season as its pages show it, with what was taken of it. */
export function useSeasonView(seasonId: string): { season: SeasonView; offer: SeasonOffer } {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const offer = useSeasonOffer(seasonId);
  const season = useMemo(() => viewOfSeason(club, offer.plan, today), [club, offer, today]);
  return { season, offer };
}
