import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason } from './clubSeason.ts';
import { planDifferences } from './planDifferences.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);
const planned = (weeksLater: number) =>
  clubSeason(
    {
      ...club,
      meet: club.meet.map((meet) => ({ ...meet, date: dateOfDay(dayNumber(meet.date) + 7 * weeksLater) })),
    },
    'season-late',
    TODAY,
  );
const [taken, moved] = [planned(0), planned(1)];

/** Everybody is given the plan of one lifter of the invented club, so that only their strength tells them apart. */
const ofStrengths = (season: ClubSeason, strengths: readonly number[]): ClubSeason => ({
  ...season,
  lifters: strengths.map((times, at) => ({
    ...season.lifters[0]!,
    lifterId: `lifter-${at}`,
    timesBodyMass: { squat: times, bench: times, deadlift: times },
  })),
});
const strength = fc.double({ min: 2.5, max: 4.5, noNaN: true });

test('whoever was held apart before, the differences of a lifter are those found alone', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(strength, strength), { minLength: 2, maxLength: 6 }),
      fc.boolean(),
      (strengths, isMoved) => {
        const before = ofStrengths(
          taken,
          strengths.map(([was]) => was),
        );
        const now = ofStrengths(
          isMoved ? moved : taken,
          strengths.map(([, is]) => is),
        );
        const alone = now.lifters.flatMap((lifter, at) =>
          planDifferences(
            { ...before, lifters: [before.lifters[at]!] },
            { ...now, lifters: [lifter] },
            TODAY,
          ),
        );
        expect(planDifferences(before, now, TODAY)).toEqual(alone);
      },
    ),
  );
});
