import { queryOptions, useSuspenseQuery } from '@tanstack/react-query';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import { fetchClub } from './fetchClub.ts';

export const clubKey = ['club'] as const;

/** Every record of the club: one query for all screens. Waits (suspends) until it is there. */
export function useClub(): ClubRecords {
  const { data } = useSuspenseQuery(wholeClub);
  return data.records;
}

/** When the club's last change was made; null: none was. */
export function useLastChange(): string | null {
  return useSuspenseQuery(wholeClub).data.madeAt;
}

/** For `useClub`, and for whoever asks before a screen is there. */
export const wholeClub = queryOptions({ queryKey: clubKey, queryFn: fetchClub });

/** The club's own settings; a file always holds one club. */
export function useClubSettings(): Club {
  const club = useClub().club[0];
  if (club === undefined) throw new Error('The club file holds no club.');
  return club;
}
