import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { Tell } from '#contract/words/doing.ts';
import { meetResults } from '#reckon/projection/meetResults.ts';
import { scoreBacktest } from '#reckon/projection/scoreBacktest.ts';
import type { ForetoldDay, MeetsAsked } from './foretellMeets.ts';

/**
 * Foretells every past meet and scores the forecasts. No day of meets rests on another's forecast: they are dealt out to `shares`
 * runs of `foretell`, which may go side by side.
 */
export async function runBacktest(
  club: Omit<MeetsAsked, 'days'>,
  foretell: (asked: MeetsAsked, tell: Tell) => Promise<ForetoldDay[]>,
  shares: number,
  tell: Tell,
): Promise<BacktestReport> {
  const days = [...new Set(meetResults(club.log, club.records.best).map(({ on }) => on))];
  const dealt = Array.from({ length: Math.min(shares, days.length) }, (_, share) =>
    days.filter((_day, i) => i % shares === share),
  );
  const told = new Map<number, { done: number; total: number }>();
  const foretold = await Promise.all(
    dealt.map((own, share) => foretell({ ...club, days: own }, (done, total) => tellAll(share, done, total))),
  );
  const byDay = foretold.flat().toSorted((a, b) => (a.day < b.day ? -1 : 1));
  return scoreBacktest(
    byDay.flatMap(({ lifts }) => lifts),
    byDay.reduce((sum, { unforetold }) => sum + unforetold, 0),
  );

  /** Once every share has said how much it is. */
  function tellAll(share: number, done: number, total: number): void {
    told.set(share, { done, total });
    if (told.size < dealt.length) return;
    const sum = (of: 'done' | 'total') => [...told.values()].reduce((all, one) => all + one[of], 0);
    tell(sum('done'), sum('total'));
  }
}
