import { describe, expect, it, test } from 'vitest';
import { dayPlan, type PlanPlace } from '#contract/day/dayPlan.ts';
import type { OtherSetup } from '#contract/day/otherSetup.ts';
import type { RecordOf } from '#contract/records/allKinds.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { solveDay } from './solveDay.ts';

type Day = RecordOf<'day'>;
const records = twoLifters();
// With two pairs only, the usual bounds would leave some lifters nothing but the bare bar.
Object.assign(records.club[0]!, { leastBandShare: 0, mostBandShare: 1 });
const aims: Day['groups'][0]['aim'][] = [
  {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.5 },
      { basis: 'lockout', share: 0.75 },
    ],
  },
  { by: 'capability', bottomShare: 0.8, lockoutShare: 0.35 },
  { by: 'speed', fromMps: 0.5, toMps: 0.6 },
];
const dayWith = (change: (group: Day['groups'][0]) => void): Day => {
  const day = structuredClone(records.day[0]!);
  for (const group of day.groups) change(group);
  return day;
};
const placesOf = (day: Day): PlanPlace[] => dayPlan.parse(solveDay(records, day)).groups[0]!.places;
const key = ({ bands, chains }: OtherSetup['set']) =>
  JSON.stringify([
    bands.map(({ bandPairId, hookupId }) => [bandPairId, hookupId]),
    chains.map(({ chainPairId, pairs }) => [chainPairId, pairs]),
  ]);

/** What would do for the tall lifter, whose log tells the chance: a guess lightens no bar. */
const heavy = (leastChance: number | null) => {
  const aim = { by: 'capability', bottomShare: 0.95, lockoutShare: 0.9 };
  const day = dayWith((group) => Object.assign(group, { leastChance, aim }));
  return solveDay(records, day, [longLog(records, 'tall', 200)]).groups[0]!.places[1]!.solved!;
};

test('a day for which nobody asks for other proposals is the same day without them', () => {
  const day = dayWith(() => {});
  const whole = solveDay(records, day);
  const bare = solveDay(records, day, [], { chosenAlone: true });
  const solved = whole.groups.flatMap(({ places }) => places.map((place) => place.solved!));
  expect(solved.flatMap(({ others }) => others).length).toBeGreaterThan(0);
  for (const one of solved) one.others = [];
  expect(bare).toEqual(whole);
});

describe('other proposals of a place', () => {
  it.each(aims)('are other sets than the one that stands and than each other: $by', (aim) => {
    for (const { solved } of placesOf(dayWith((group) => Object.assign(group, { aim })))) {
      const { set, others } = solved!;
      expect(others.length).toBeGreaterThan(0);
      expect(new Set([set, ...others.map((other) => other.set)].map(key)).size).toBe(1 + others.length);
    }
  });

  it.each(aims)(
    'are, once taken, on the bar what they said they would be, and leave the way back open: $by',
    (aim) => {
      const day = dayWith((group) => Object.assign(group, { aim }));
      const before = placesOf(day)[0]!.solved!;
      for (const other of before.others) {
        const bands = other.set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId }));
        const chains = other.set.chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs }));
        const taken = structuredClone(day);
        taken.groups[0]!.places[0]!.byCoach = { barKg: other.barKg, bands, chains };
        const { set, barKg, blocks, others } = placesOf(taken)[0]!.solved!;
        const { explanation, effort } = blocks.findLast(({ shareOfAim }) => shareOfAim === 1)!;
        const { percentages, shares } = explanation;
        expect(key(set)).toBe(key(other.set));
        expect(barKg).toBe(other.barKg);
        expect(shares[0]!.share).toBeCloseTo(other.shareAtBottom, 12);
        expect(shares.at(-1)!.share).toBeCloseTo(other.shareAtLockout, 12);
        for (const { basis, share } of other.percentages)
          expect(percentages.find((one) => one.basis === basis)!.share).toBeCloseTo(share, 12);
        if (aim.by === 'speed') expect(other.aimedMps).toBeCloseTo(effort!.firstMps, 9);
        else expect(other.aimedMps).toBeNull();
        expect(others.map((one) => key(one.set))).toContain(key(before.set));
      }
    },
  );

  it('keep a bar that the coach fixed, and free it once the bands are fixed too', () => {
    const fixed = { barKg: 60, bands: null, chains: null };
    const day = dayWith((group) => Object.assign(group.places[0]!, { byCoach: fixed }));
    const others = placesOf(day)[0]!.solved!.others;
    expect(others.length).toBeGreaterThan(0);
    for (const { barKg, speaksFor } of others) {
      expect(barKg).toBe(60);
      expect(speaksFor.map(({ code }) => code)).not.toContain('heavierBar');
    }
    Object.assign(day.groups[0]!.places[0]!, { byCoach: { ...fixed, bands: [], chains: [] } });
    expect(placesOf(day)[0]!.solved!.others.some(({ barKg }) => barKg !== 60)).toBe(true);
  });

  it('are made as likely as the group asks, lighter than without that', () => {
    const [asked, sure] = [heavy(null), heavy(0.95)];
    const barOf = (other: OtherSetup) => sure.others.find(({ set }) => key(set) === key(other.set))?.barKg;
    const both = asked.others.filter((other) => barOf(other) !== undefined);
    expect(both.length).toBeGreaterThan(0);
    for (const other of both) expect(barOf(other)).toBeLessThan(other.barKg);
  });

  it('say that they come nearer to the aim where what stands was set far from it by hand', () => {
    const byCoach = { barKg: 20, bands: [], chains: [] };
    const day = dayWith((group) => Object.assign(group.places[0]!, { byCoach }));
    const [first] = placesOf(day)[0]!.solved!.others;
    expect(first!.speaksFor[0]).toMatchObject({ code: 'nearerToAim' });
  });
});
