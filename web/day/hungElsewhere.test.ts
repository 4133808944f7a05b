import { expect, test } from 'vitest';
import type { PlanGroup } from '#contract/day/dayPlan.ts';
import { hungElsewhere } from './hungElsewhere.ts';

const band = (label: string) => ({ bandPairId: label, hookupId: 'low', label, hookupWords: 'single' });
const seat = (rackId: string, label: string, byHand: boolean) => ({
  rackId,
  solved: { set: { bands: [band(label)], chains: [] }, byCoach: { bar: false, set: byHand } },
});
const group = (byHand: boolean) =>
  ({
    places: [seat('north', '22-A', byHand), seat('south', '13-A', byHand)],
    racks: [
      { rackId: 'north', label: 'North rack' },
      { rackId: 'south', label: 'South rack' },
    ],
  }) as unknown as PlanGroup;
const wanting = (label: string) => ({ set: { bands: [band(label)], chains: [] } });

test('a pair at another rack is named with that rack, and whether it must be given back there by hand', () => {
  expect(hungElsewhere(group(false), { rackId: 'north' }, wanting('13-A'))).toMatch(
    /13-A hangs at South rack/,
  );
  expect(hungElsewhere(group(true), { rackId: 'north' }, wanting('13-A'))).toMatch(
    /13-A is set by hand at South/,
  );
});

test("nothing is said of the rack's own pairs and of those that hang nowhere", () => {
  expect(hungElsewhere(group(false), { rackId: 'north' }, wanting('22-A'))).toBeNull();
  expect(hungElsewhere(group(false), { rackId: 'north' }, wanting('64-A'))).toBeNull();
});
