import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { ClassAhead } from '#contract/season/classAhead.ts';
import { classesAhead } from '#reckon/season/classesAhead.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** The classes of a lifter at the meets of a season that are still to come. */
export function classesInSeason(club: ClubRecords, season: SeasonView, of: LifterSeason): ClassAhead[] {
  const entries = club.seasonEntry.filter(
    ({ seasonId, lifterId }) => seasonId === season.id && lifterId === of.lifter.id,
  );
  return classesAhead(club, entries, season.today);
}
