import { describe, expect, it } from 'vitest';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import { longLog } from '#contract/tests/longLog.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { planByLog } from './planByLog.ts';
import { solveDay } from './solveDay.ts';
import { toldAnew } from './toldAnew.ts';

const records = twoLifters();
const [day] = records.day;
const plan: DayPlan = solveDay(records, day!);
const log = longLog(records, 'tall', 200);
const placesOf = (told: DayPlan | null) => told!.groups[0]!.places;

describe('a plan that was made before a log was worked out', () => {
  it('keeps its bars and gear for the lifter of the log and tells the chances of them by it; others stay as they are', () => {
    const [short, tall] = placesOf(planByLog(records, day!, plan, 1, [log]));
    const [shortBefore, before] = placesOf(plan);
    expect(short).toBe(shortBefore);
    const { set, barKg, misfit, blocks, strength } = tall!.solved!;
    expect({ set, barKg, misfit }).toEqual({
      set: before!.solved!.set,
      barKg: before!.solved!.barKg,
      misfit: before!.solved!.misfit,
    });
    expect(blocks.map((block) => [block.barKg, block.perSide, block.expected!.goesBy])).toEqual(
      before!.solved!.blocks.map((block) => [block.barKg, block.perSide, 'log']),
    );
    expect(strength.setCount).toBe(40);
  });

  it('says which number it tells anew, of whom, and leaves that plan as it was', () => {
    const before = structuredClone(plan);
    const told = planByLog(records, day!, plan, 4, [log])!;
    expect(told.retells).toBe(4);
    expect(toldAnew(plan, told)).toEqual({ lifters: ['tall'], likelyToMiss: [] });
    expect(toldAnew(told, told)).toEqual({ lifters: [], likelyToMiss: [] });
    expect(plan).toEqual(before);
    // Told once, there is nothing more to offer.
    expect(planByLog(records, day!, told, 5, [log])).toBeNull();
  });

  it('says who is likely to miss by a log that knows of much less than the best', () => {
    const weak = planByLog(records, day!, plan, 1, [longLog(records, 'tall', 120)])!;
    expect(toldAnew(plan, weak)).toEqual({ lifters: ['tall'], likelyToMiss: ['tall'] });
  });

  it('has nothing to add without a log, for a plan by the log, or for a group that is gone', () => {
    expect(planByLog(records, day!, plan, 1, [])).toBeNull();
    expect(planByLog(records, day!, solveDay(records, day!, [log]), 1, [log])).toBeNull();
    expect(planByLog(records, { ...day!, groups: [] }, plan, 1, [log])).toBeNull();
  });

  it('is left alone where a pair that it hangs is at the rack no more', () => {
    const [group] = plan.groups;
    const places = group!.places.map((place) => {
      const [band, ...others] = place.solved!.set.bands;
      const set = { ...place.solved!.set, bands: [{ ...band!, bandPairId: 'sold' }, ...others] };
      return { ...place, solved: { ...place.solved!, set } };
    });
    expect(planByLog(records, day!, { ...plan, groups: [{ ...group!, places }] }, 1, [log])).toBeNull();
  });
});
