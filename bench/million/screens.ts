import type { ClubRecords } from '#contract/records/allKinds.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { shownBy } from '../crowd/screen.ts';

interface Club {
  records: ClubRecords;
  seq: number;
  madeAt: string;
}

/** The addresses that each screen shows an answer of, with those of its parts that are opened later. Evidence is asked for elsewhere: it is worked out once. */
export function addressesOf(
  { records, seq, madeAt }: Club,
  dayId: string,
  today: string,
): Record<string, readonly string[]> {
  const { seasonId, lifterId } = records.seasonEntry[0]!;
  const { fromOn } = records.season.find(({ id }) => id === seasonId)!;
  const season = `/api/seasons/${seasonId}`;
  const crowd = shownBy(dayId, lifterId, today);
  return {
    'every screen': ['/api/club', `/api/club/changes?after=${seq}&madeAt=${madeAt}`],
    day: [...paths(crowd.day), `/api/days/${dayId}/prescription`, `/api/days/${dayId}/changed`],
    lifter: [
      ...paths(crowd.lifter),
      `/api/estimates/capacity?lifterId=${lifterId}&lift=squat`,
      `/api/projection?lifterId=${lifterId}&on=${daysLater(today, 60)}&equipment=raw&taperPercent=2`,
    ],
    everybody: paths(crowd.everybody),
    log: [...paths(crowd.log), '/api/sets/days?words=knee', '/api/sets'],
    gear: paths(crowd.gear),
    evidence: ['/api/backtest'],
    season: [
      `${season}/plan`,
      `${season}/weeks/${daysLater(fromOn, 49)}`,
      `${season}/lifters/${lifterId}/ahead`,
      '/api/seasons/gear',
    ],
    copies: ['/api/copies'],
  };
}

function paths(shown: readonly { path: string }[]): string[] {
  return shown.map(({ path }) => path);
}
