import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import { gearWarningSentences } from '#contract/season/gearWarningSentences.ts';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { gearOverSeason } from './gearOverSeason.ts';

const first = '2026-12-01';
const club = millraceClub(first);
/** One pair is left from the third week on. */
const third = dateOfDay(dayNumber(first) + 14);
const left = club.bandPair.find(({ widthMm }) => widthMm === 29)!;
const records = {
  ...club,
  bandPair: club.bandPair.map((pair) => ({ ...pair, retiredOn: pair.id === left.id ? null : third })),
};
const group: GroupOfLifter = {
  askedId: 'speed-squat',
  title: 'Speed squat',
  work: 'speed',
  lift: 'squat',
  variantId: 'box',
  start: { way: 'box', heightM: 0.36 },
  aim: { by: 'percent', targets: [{ basis: 'bar', share: 0.5 }] },
  blocks: [{ sets: 8, reps: 2, restSeconds: 60, shareOfAim: 1 }],
  leastChance: null,
  bounds: null,
  leastTimesBodyMass: null,
  bandShare: 0,
  lockoutShare: 0.5,
  meanShare: 0.5,
  byHand: false,
};
const everyWeek = (weeks: number, more: Partial<GroupOfLifter> = {}) =>
  Array.from({ length: weeks }, (_, week) => ({
    date: dateOfDay(dayNumber(first) + 7 * week),
    groups: [{ ...group, ...more }],
  }));

describe('gear over a season', () => {
  it('is silent while racks, bands and the hour do', () => {
    const lifters = ['lifter-emre', 'lifter-lars'].map((lifterId) => ({ lifterId, days: everyWeek(6) }));
    expect(gearOverSeason(records, lifters)).toEqual([]);
  });

  it('tells a fault of several weeks once, from its first day to its last, once the pairs are gone', () => {
    const lifters = [{ lifterId: 'lifter-emre', days: everyWeek(6, { bandShare: 0.35 }) }];
    const warnings = gearOverSeason(records, lifters);
    expect(warnings).toMatchObject([
      { code: 'outOfReach', fromOn: third, days: 4, name: 'Emre Karataylı', bandShare: 0.35 },
    ]);
    expect(warnings[0]!.untilOn).toBe(everyWeek(6).at(-1)!.date);
    expect(gearWarningSentences(warnings)[0]).toMatch(
      /^Tue 15 Dec to Tue 5 Jan, Speed squat: .*35 % in bands/,
    );
  });

  it('says of a lift without a rack that alone, and falls silent once a rack takes it', () => {
    const lifters = [{ lifterId: 'lifter-emre', days: everyWeek(3, { bandShare: 0 }) }];
    const racks = club.rack.map((rack) => ({ ...rack, lifts: ['bench' as const] }));
    const warnings = gearOverSeason({ ...club, rack: racks }, lifters);
    expect(warnings).toMatchObject([{ code: 'noRack', fromOn: first, days: 3, lift: 'squat' }]);
    expect(gearWarningSentences(warnings)).toEqual([
      expect.stringMatching(/^No rack of the club takes the squat.* Add a rack on the gear screen/),
    ]);
    expect(gearOverSeason({ ...club, rack: [] }, lifters)).toMatchObject([{ code: 'noRack' }]);
    expect(gearOverSeason(club, lifters)).toEqual([]);
  });

  it('says once of a box that nobody can build that it is not there, and falls silent once it is', () => {
    const lifters = ['lifter-emre', 'lifter-lars'].map((lifterId) => ({ lifterId, days: everyWeek(3) }));
    const [one] = club.box;
    const lower = { ...club, box: [{ ...one!, sort: 'box' as const, heightM: 0.33 }] };
    expect(gearOverSeason(lower, lifters)).toMatchObject([
      { code: 'noBox', fromOn: first, days: 3, heightM: 0.36, nearestM: 0.33 },
    ]);
    expect(gearWarningSentences(gearOverSeason(lower, lifters))).toEqual([
      expect.stringMatching(/no box of 36 cm, the nearest is 33 cm; Speed squat, .* asks for it\. Add it/),
    ]);
    expect(gearWarningSentences(gearOverSeason({ ...club, box: [] }, lifters))).toEqual([
      expect.stringMatching(/^The club has no box; .* asks for one of 36 cm\./),
    ]);
    const mats = { ...one!, id: 'mat', sort: 'mat' as const, heightM: 0.015, pieces: 2 };
    expect(gearOverSeason({ ...lower, box: [...lower.box, mats] }, lifters)).toEqual([]);
  });

  it('says before the season begins that the racks have too few turns, and falls silent by each thing that it says would mend it', () => {
    // Forty sets of a minute in two hours leave three lifters a rack, and there are two racks.
    const long = everyWeek(1, { blocks: [{ sets: 40, reps: 2, restSeconds: 60, shareOfAim: 1 }] });
    const all = records.lifter.slice(0, 8).map(({ id }) => ({ lifterId: id, days: long }));
    const [short, ...others] = gearOverSeason(records, all);
    expect(others).toEqual([]);
    expect(short).toMatchObject({
      code: 'gearShort',
      of: 8,
      isMost: true,
      lacking: 'turns',
      racks: 2,
      aRack: 3,
    });
    expect(short).toHaveProperty('names.length', 2);
    expect(gearWarningSentences([short!])[0]).toMatch(
      /^Tue 1 Dec, Speed squat: 2 racks with time for 3 lifters each are not enough for all 8; .* would go without\. Another hour for those who go without, or one more rack for this lift, or 160 minutes of training would do\.$/,
    );
    const squatRack = records.rack.find(({ lifts }) => lifts.includes('squat'))!;
    const oneRackMore = { ...records, rack: [...records.rack, { ...squatRack, id: 'rack-new' }] };
    expect(gearOverSeason(oneRackMore, all)).toEqual([]);
    const lasting = (trainingMinutes: number) => ({
      ...records,
      club: [{ ...records.club[0]!, trainingMinutes }],
    });
    expect(gearOverSeason(lasting(160), all)).toEqual([]);
    expect(gearOverSeason(lasting(159), all)).toHaveLength(1);
    const { names } = short as { names: string[] };
    const isNamed = ({ lifterId }: { lifterId: string }) =>
      names.includes(records.lifter.find(({ id }) => id === lifterId)!.name);
    for (const part of [all.filter(isNamed), all.filter((one) => !isNamed(one))])
      expect(gearOverSeason(records, part)).toEqual([]);
  });
});
