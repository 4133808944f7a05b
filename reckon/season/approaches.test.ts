import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from '#contract/calendar/dayNumber.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { approachesOf } from './approaches.ts';

const today = '2026-12-01';
const demo = millraceClub(today);
const hookup = demo.hookup.find(({ lifts }) => lifts.includes('squat'))!;
const pair = demo.bandPair.find(({ widthMm }) => widthMm === 29)!;
const ofPair = demo.bandReading.filter(({ bandPairId }) => bandPairId === pair.id);
const newest = ofPair.map(({ takenOn }) => takenOn).reduce((a, b) => (a > b ? a : b));
/** The demo club with one reading of the pair, taken before everything: it pulls alike throughout. */
const club = {
  ...demo,
  bandReading: ofPair
    .filter(({ takenOn }) => takenOn === newest)
    .map((one) => ({ ...one, takenOn: '2025-01-01' })),
};
const bands = [{ bandPairId: pair.id, hookupId: hookup.id }];
const box = { way: 'box', heightM: 0.36 } as const;
const ago = (days: number) => dateOfDay(dayNumber(today) - days);

let made = 0;
/** A single with no rep left, so that it is hard; invented. */
function single(barKg: number, doneOn: string, more: Partial<LoggedSet> = {}): LoggedSet {
  made += 1;
  return {
    id: `set-${made}`,
    lifterId: 'lifter-emre',
    lift: 'squat',
    equipment: 'wraps',
    setup: { rackId: hookup.rackId, start: box, barKg, bands, chains: [] },
    doneOn,
    order: made,
    reps: 1,
    made: 1,
    repsInReserve: 0,
    meanSpeedsMps: [],
    peakSpeedsMps: [],
    stoppedAtS: null,
    platform: false,
    place: '',
    struckAt: null,
    ...more,
  } as LoggedSet;
}

const straight = { rackId: null, start: { way: 'free', heightM: null }, bands: [], chains: [] } as const;
const onPlatform = (barKg: number, doneOn: string) =>
  single(barKg, doneOn, { platform: true, setup: { ...straight, barKg, bands: [], chains: [] } });

describe('approaches to meets', () => {
  it('holds the heaviest of the six weeks before each meet against what was made there, and foretells by their ratio', () => {
    const sets = [
      single(157.5, ago(230)),
      onPlatform(200, ago(200)),
      single(160, ago(130)),
      single(165, ago(120)),
      // In the last three days it is too late to count.
      single(168, ago(102)),
      onPlatform(210, ago(100)),
      single(170, ago(7)),
    ];
    const [one, ...others] = approachesOf(club, sets, [], { lift: 'squat', today });
    expect(others).toEqual([]);
    expect(one!.cases.map(({ meet, lift }) => [meet.barKg, lift.barKg])).toEqual([
      [210, 165],
      [200, 157.5],
    ]);
    // What the bands add at lockout is the same each time: the bar alone moves.
    const [newer, older] = one!.cases;
    expect(newer!.lockoutKg - older!.lockoutKg).toBeCloseTo(7.5, 6);
    expect(older!.lockoutKg).toBeGreaterThan(160);
    expect(one!.now!.lockoutKg - newer!.lockoutKg).toBeCloseTo(5, 6);
    const mean = Math.sqrt((210 / newer!.lockoutKg) * (200 / older!.lockoutKg));
    expect(one!.foretold!.value).toBeCloseTo(one!.now!.lockoutKg * mean, 6);
  });

  it('takes no case from a meet in other equipment or without bands before it', () => {
    const meet = { ...onPlatform(210, ago(100)), equipment: 'single-ply' as const };
    const bare = { ...straight, start: box, barKg: 165, bands: [], chains: [] };
    expect(approachesOf(club, [single(165, ago(120)), meet], [], { lift: 'squat', today })).toEqual([]);
    const sets = [single(165, ago(120), { setup: bare }), onPlatform(210, ago(100))];
    expect(approachesOf(club, sets, [], { lift: 'squat', today })).toEqual([]);
  });
});
