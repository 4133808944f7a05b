import { beforeAll, expect, test } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { ClubSeason } from '#contract/season/clubSeason.ts';
import { reasonSentence } from '#contract/season/differenceSentences.ts';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { clubSeason } from './clubSeason.ts';
import { groupsFor } from './groupsFor.ts';
import { planDifferences } from './planDifferences.ts';

const TODAY = '2026-11-25';
const club = millraceClub(TODAY);
const later = (days: number) => dateOfDay(dayNumber(TODAY) + days);
const [FROM, UNTIL] = [later(3), later(30)];
const early = (records: ClubRecords) => clubSeason(records, 'season-early', TODAY);

/** The early crew with Ilse hurt for four weeks. */
function hurt(of: Partial<RecordOf<'restriction'>>): ClubRecords {
  const restriction: RecordOf<'restriction'> = {
    id: 'hurt',
    lifterId: 'lifter-ilse',
    lift: 'squat',
    leastBoxM: null,
    mostShare: null,
    shareOf: 'bar',
    fromOn: FROM,
    untilOn: UNTIL,
    note: '',
    ...of,
  };
  return { ...club, restriction: [...club.restriction, restriction] };
}

const squatsOf = (season: ClubSeason, isWanted: (date: string) => boolean): GroupOfLifter[] => {
  const ilse = season.lifters.find(({ lifterId }) => lifterId === 'lifter-ilse')!;
  return season.plans[ilse.plan!]!.weeks.flatMap(({ days }) => days)
    .filter(({ date }) => isWanted(date))
    .flatMap((day) => groupsFor(day, ilse))
    .filter(({ lift }) => lift === 'squat');
};
const isWithin = (date: string) => date >= FROM && date <= UNTIL;

let season: ClubSeason;
beforeAll(() => {
  season = early(club);
});

test('a lifter who may not go deep has no start below that box while it holds, everybody else has what they had', () => {
  const now = early(hurt({ leastBoxM: 0.4 }));
  const within = squatsOf(now, isWithin);
  expect(within.length).toBeGreaterThan(0);
  expect(squatsOf(season, isWithin).some(({ start }) => start.way === 'free')).toBe(true);
  for (const { start } of within) {
    expect(start.way).toBe('box');
    expect(start.heightM).toBeGreaterThanOrEqual(0.4);
  }
  expect(squatsOf(now, (date) => date > UNTIL).some(({ start }) => start.way === 'free')).toBe(true);
  const differences = planDifferences(season, now, TODAY);
  expect(differences.map(({ lifterId }) => lifterId)).toEqual(['lifter-ilse']);
  expect(differences[0]!.why.map(reasonSentence)[0]).toMatch(
    /^Restricted in the squat from Sat 28 Nov to Fri 25 Dec: starts and loads of those days keep to it\./,
  );
});

test('a lifter who may hold a share has no step above it, bands less in the same proportion', () => {
  const now = early(hurt({ mostShare: 0.6, shareOf: 'lockout' }));
  const was = squatsOf(season, isWithin);
  squatsOf(now, isWithin).forEach((group, at) => {
    const heaviest = Math.max(...group.blocks.map(({ shareOfAim }) => shareOfAim));
    expect(group.lockoutShare! * heaviest).toBeLessThanOrEqual(0.6);
    expect(group.lockoutShare).toBeGreaterThan(0.59);
    const { bandShare, lockoutShare } = was[at]!;
    if (bandShare) expect(group.bandShare! / group.lockoutShare!).toBeCloseTo(bandShare / lockoutShare!, 2);
  });
  expect(squatsOf(now, (date) => date > UNTIL)).toEqual(squatsOf(season, (date) => date > UNTIL));
  const over = planDifferences(now, season, TODAY);
  expect(over[0]!.why.map(({ code }) => code)).toEqual(['heldGone']);
});

test('other equipment is told though no share changes, since every bar does', () => {
  const lifter = club.lifter.map((one) =>
    one.id === 'lifter-lars' ? { ...one, equipment: 'single-ply' as const } : one,
  );
  const [lars, ...others] = planDifferences(season, early({ ...club, lifter }), TODAY);
  expect(others).toEqual([]);
  expect(lars!.why.map(reasonSentence)[0]).toMatch(
    /^Lifts .* instead of raw: percentages now refer to that maximum/,
  );
});
