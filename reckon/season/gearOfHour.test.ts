import { describe, expect, it } from 'vitest';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { bandWays } from './bandWays.ts';
import { gearOfHour, type HourAsked } from './gearOfHour.ts';

const on = '2026-12-01';
const records = millraceClub(on);
const start = { way: 'box', heightM: 0.36 } as const;
const [emre, lars] = ['lifter-emre', 'lifter-lars'];

/** The demo club with one pair of bands left. */
function withOnly(pairId: string): ClubRecords {
  return {
    ...records,
    bandPair: records.bandPair.map((pair) => ({ ...pair, retiredOn: pair.id === pairId ? null : on })),
  };
}

/** The same club with another pair just like one of its own. */
function withTwin(club: ClubRecords, pairId: string): ClubRecords {
  const twin = club.bandPair.filter(({ id }) => id === pairId).map((pair) => ({ ...pair, id: 'twin' }));
  const readings = club.bandReading
    .filter(({ bandPairId }) => bandPairId === pairId)
    .map((reading) => ({ ...reading, id: `twin ${reading.id}`, bandPairId: 'twin' }));
  return {
    ...club,
    bandPair: [...club.bandPair, ...twin],
    bandReading: [...club.bandReading, ...readings],
  };
}

/** What one pair alone brings a lifter, at any rack. */
function shareOf(club: ClubRecords, lifterId: string): number {
  const { byRack } = bandWays(club)(lifterId, 'squat', start, on)!;
  return Math.max(...byRack.flat().map(({ share }) => share));
}

const find = (club: ClubRecords, lifterIds: string[], more: Partial<HourAsked> = {}) =>
  gearOfHour(
    club,
    {
      on,
      lift: 'squat',
      mostARack: 4,
      turnMinutes: 10,
      lifters: lifterIds.map((lifterId) => ({ lifterId, start, bandShare: shareOf(club, lifterId) })),
      ...more,
    },
    bandWays(club),
  );

describe('the gear of an hour', () => {
  const pair = records.bandPair.find(({ widthMm }) => widthMm === 29)!;
  const club = withOnly(pair.id);

  it('serves those who take turns with one pair at one rack, and is silent then', () => {
    expect(find(club, [emre, lars])).toEqual({ short: null, outOfReach: [], notJudged: [] });
  });

  it('names who is left without where the rack has room for one, and falls silent by each thing that it says would mend it', () => {
    const oneTurn = { mostARack: 1 };
    const { short } = find(club, [emre, lars], oneTurn);
    expect(short!.lifterIds).toHaveLength(1);
    expect(short).toMatchObject({ isMost: true, lacking: 'bands' });
    expect(short!.mends).toEqual([{ by: 'anotherHour' }, { by: 'onePairMore', widthMm: 29 }]);
    expect(find(club, short!.lifterIds, oneTurn).short).toBeNull();
    const lifters = [emre, lars].map((lifterId) => ({
      lifterId,
      start,
      bandShare: shareOf(club, lifterId),
    }));
    expect(find(club, [], { ...oneTurn, lifters }).short).toEqual(short);
    expect(find(withTwin(club, pair.id), [], { ...oneTurn, lifters }).short).toBeNull();
  });

  it('says whom no bands bring there, with the nearest that they do', () => {
    const most = shareOf(club, emre);
    const asked = [{ lifterId: emre, start, bandShare: most + 0.2 }];
    const { outOfReach, short } = find(club, [], { lifters: asked });
    expect(short).toBeNull();
    expect(outOfReach).toEqual([{ lifterId: emre, bandShare: most + 0.2, nearestShare: most }]);
  });

  it('names whom it cannot judge: one whose box is higher than lockout', () => {
    const lifters = [{ lifterId: emre, start: { way: 'box', heightM: 1.45 } as const, bandShare: 0.25 }];
    expect(find(club, [], { lifters })).toEqual({ short: null, outOfReach: [], notJudged: [emre] });
  });
});
