import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { TakenPlan } from '#contract/records/takenPlan.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { clubSeason } from '#reckon/season/clubSeason.ts';
import { keepPast } from '#reckon/season/keepPast.ts';
import { dayFrom } from './dayFrom.ts';

/**
 * The plans of the invented club's seasons as its coach took them: each when the season began, that of the early crew once more when the Tollbridge
 * Open was moved by two weeks. Invented, like the club.
 */
export function millraceTaken(records: ClubRecords, today: string): TakenPlan[] {
  const [began, moved] = [dayFrom(today, -44), dayFrom(today, -9)];
  const atFirst: ClubRecords = {
    ...records,
    plannedByHand: [],
    absence: records.absence.filter(({ lifterId }) => lifterId === null),
    meet: records.meet.map((meet) =>
      meet.id === 'meet-tollbridge' ? { ...meet, date: dayFrom(meet.date, -14) } : meet,
    ),
  };
  const first = clubSeason(atFirst, 'season-early', began);
  const second = keepPast(first, clubSeason(records, 'season-early', moved), moved, gravityOf(records));
  return [
    taken('season-early', 1, began, first),
    taken('season-early', 2, moved, second),
    taken('season-late', 1, began, clubSeason(records, 'season-late', began)),
  ];
}

function taken(seasonId: string, number: number, on: string, document: ClubSeason): TakenPlan {
  return {
    id: `taken-${seasonId}-${number}`,
    seasonId,
    number,
    takenAt: `${on}T19:40:00.000Z`,
    takenBy: 'the head coach',
    document,
  };
}
