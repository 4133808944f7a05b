import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ClubSeason } from './clubSeason.ts';
import type { PlannedWeek } from './seasonPlan.ts';
import { weeksInPlans, weeksOnce } from './sentWeeks.ts';

const load = { lifts: 0, meanShare: null, heavyLifts: 0, monotony: null, sledWorkJ: 0 };
const weekOf = (weekOfPhase: number): PlannedWeek => ({
  monday: '2027-01-04',
  isoWeek: '2027-W01',
  phaseId: 'phase',
  weekOfPhase,
  wave: null,
  weekOfWave: null,
  meets: [],
  days: [],
  load,
});
const seasonOf = (plans: number[][]) =>
  ({ title: 'Year', plans: plans.map((weeks) => ({ weeks: weeks.map(weekOf) })) }) as unknown as ClubSeason;

test('a season that was sent is the same, each week that reads alike went once, and plans hold it in common', () => {
  fc.assert(
    fc.property(fc.array(fc.array(fc.integer({ min: 1, max: 5 }))), (plans) => {
      const season = seasonOf(plans);
      const sent = weeksOnce(season);
      expect(sent.weeks).toHaveLength(new Set(plans.flat()).size);
      const received = weeksInPlans(JSON.parse(JSON.stringify(sent)));
      expect(received).toEqual(season);
      expect(new Set(received.plans.flatMap(({ weeks }) => weeks)).size).toBe(sent.weeks.length);
    }),
  );
});
