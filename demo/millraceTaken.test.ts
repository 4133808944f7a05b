import { describe, expect, it } from 'vitest';
import { type ClubSeason, clubSeason as shape } from '#contract/season/clubSeason.ts';
import { clubSeason } from '#reckon/season/clubSeason.ts';
import { planDifferences } from '#reckon/season/planDifferences.ts';
import { millraceClub } from './millraceClub.ts';
import { millraceTaken } from './millraceTaken.ts';

// Every day of a week: the club's season counts in weeks, today does not.
describe.each(['2026-11-23', '2026-11-25', '2026-11-29'])('the invented club on %s', (today) => {
  const club = millraceClub(today);
  const taken = millraceTaken(club, today);

  it('has plans taken that hold: nothing differs from the records as they are', () => {
    for (const { seasonId, number, document } of taken) {
      expect(shape.parse(document)).toEqual(document);
      if (taken.some((other) => other.seasonId === seasonId && other.number > number)) continue;
      const now = clubSeason(club, seasonId, today);
      expect(planDifferences(document as ClubSeason, now, today)).toEqual([]);
    }
    expect(taken.map(({ takenAt }) => takenAt.slice(0, 10) < today)).toEqual([true, true, true]);
  });

  it('has one of them changed once, for a meet that moved', () => {
    const [first, second] = taken.map(({ document }) => document as ClubSeason);
    const why = planDifferences(first!, second!, today).flatMap((one) => one.why);
    expect(why.map(({ code }) => code)).toContain('meetMoved');
  });

  it('has work set by hand that has its place', () => {
    const plans = clubSeason(club, 'season-early', today).plans;
    expect(
      plans.some(({ weeks }) =>
        weeks.some(({ days }) => days.some(({ groups }) => groups.some(({ byHand }) => byHand))),
      ),
    ).toBe(true);
    expect(plans.flatMap(({ warnings }) => warnings).filter(({ code }) => code === 'strayByHand')).toEqual(
      [],
    );
  });
});
