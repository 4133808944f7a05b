import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { AskedPlan, ClubSeason } from '#contract/season/clubSeason.ts';
import { clubSeason, type RecallPlan } from '#reckon/season/clubSeason.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';
import { timed } from './timed.ts';
import { TODAY, yearOf } from './yearOf.ts';

/**
 * A program that has just been started: it has shown the season once beside the plan that was taken, and then hears that a meet has moved, and moved again.
 * Tells the processor's milliseconds for each answer; the first is the one that a coach waits for.
 */
process.once('message', ({ lifters, weeks, meetAt, answers }: Asked) => {
  const records = yearOf(lifters, weeks);
  let before = new Map<string, AskedPlan>();
  const planned = (of: typeof records): ClubSeason => {
    const used = new Map<string, AskedPlan>();
    const recall: RecallPlan = (key, make) => {
      const plan = before.get(key) ?? make();
      used.set(key, plan);
      return plan;
    };
    const season = clubSeason(of, 'year', TODAY, recall);
    before = used;
    return season;
  };
  const season = planned(records);
  const taken = JSON.parse(JSON.stringify(season)) as ClubSeason;
  planDifferences(taken, season, TODAY);
  const ms = Array.from({ length: answers }, (_, at) => {
    const meet = records.meet.map((one, place) =>
      place === meetAt ? { ...one, date: dateOfDay(dayNumber(one.date) + 7 * (1 + (at % 2))) } : one,
    );
    return timed(() => planDifferences(taken, planned({ ...records, meet }), TODAY)).ms;
  });
  process.send!(ms);
});

export interface Asked {
  lifters: number;
  weeks: number;
  /** The meet that moves: 0 is every fourth lifter's, 1 everybody's. */
  meetAt: number;
  answers: number;
}
