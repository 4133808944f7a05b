import { describe, expect, it } from 'vitest';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { planBasis } from './planBasis.ts';

const club = millraceClub('2026-11-25');
const day = club.day.find(({ groups }) => groups.some(({ places }) => places.length > 1))!;
const lifterId = day.groups[0]!.places[0]!.lifterId;
const before = planBasis(club, day);

describe('the mark of what a plan rests on', () => {
  it('stays with order, titles, notes and people who are not in the day', () => {
    const strangers = (rows: ClubRecords['best']) =>
      rows.filter((row) =>
        day.groups.some(({ places }) => places.some((place) => place.lifterId === row.lifterId)),
      );
    const same: ClubRecords = {
      ...club,
      best: strangers(club.best),
      disc: club.disc.toReversed(),
      rack: club.rack.map((rack) => ({ ...rack, note: 'repainted' })),
    };
    expect(planBasis(same, { ...day, title: 'Another', note: 'New' })).toBe(before);
  });

  it('changes with a reading, a height, a best, a rating, the order of lifters and a bar set by hand', () => {
    const [group, ...others] = day.groups;
    const [first, second, ...rest] = group!.places;
    const places = (changed: typeof rest) => ({
      ...day,
      groups: [{ ...group!, places: changed }, ...others],
    });
    const byCoach = (barKg: number) => ({ ...first!, byCoach: { barKg, bands: null, chains: null } });
    const marks = [
      before,
      planBasis({ ...club, bandReading: club.bandReading.slice(1) }, day),
      planBasis({ ...club, liftHeights: club.liftHeights.filter((row) => row.lifterId !== lifterId) }, day),
      planBasis({ ...club, best: club.best.filter((row) => row.lifterId !== lifterId) }, day),
      planBasis({ ...club, anchor: club.anchor.map((row) => ({ ...row, ratedLoadN: 1 })) }, day),
      planBasis(club, places([second!, first!, ...rest])),
      planBasis(club, places([byCoach(100), second!, ...rest])),
      planBasis(club, places([byCoach(102.5), second!, ...rest])),
    ];
    expect(new Set(marks).size).toBe(marks.length);
  });
});
