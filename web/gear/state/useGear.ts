import { useMemo } from 'react';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useBandReps } from '#web/api/useBandReps.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { localToday } from '#web/parts/localToday.ts';
import { type HookupPlace, hookupPlaces } from './pairPull.ts';
import { type PairState, pairState } from './pairState.ts';

/** The club's gear with all that is worked out of it. */
export interface Gear {
  records: ClubRecords;
  club: Club;
  today: string;
  gravityMps2: number;
  pairs: readonly PairState[];
  places: readonly HookupPlace[];
}

export function useGear(): Gear {
  const records = useClub();
  const club = useClubSettings();
  const bandReps = useBandReps();
  return useMemo(() => {
    const today = localToday(club.timeZone);
    return {
      records,
      club,
      today,
      gravityMps2: gravityOf(records),
      pairs: records.bandPair
        .map((pair) => pairState(records, club, pair, today, bandReps))
        .toSorted(
          (x, y) => x.pair.widthMm - y.pair.widthMm || x.pair.label.localeCompare(y.pair.label, 'en'),
        ),
      places: hookupPlaces(records),
    };
  }, [records, club, bandReps]);
}
