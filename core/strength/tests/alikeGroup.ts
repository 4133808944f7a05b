import type { EffortGroup } from '../sessions.ts';
import { alikeModel } from './alikeShapes.ts';

const nothing = { mean: 0, count: 0 };

/** A single that was made with a bar of so much, of which nothing else is known unless it is `told`. */
export function alikeGroup(kg: number, told: Partial<EffortGroup> = {}): EffortGroup {
  return {
    model: alikeModel('free', Math.log(kg), 0.05, 0),
    equipment: null,
    platform: false,
    made: 1,
    missed: false,
    count: 1,
    fastestMps: nothing,
    peakMps: nothing,
    lastMps: nothing,
    reserve: nothing,
    stopped: nothing,
    topShare: 0,
    stopShare: 1,
    carriedLn: 0,
    restS: [300],
    members: [],
    ...told,
  } as EffortGroup;
}

/** How fast a single of `kg` goes for somebody who has this maximum: 0.3 m/s and the root of what is spare. */
export function alikeSpeed(kg: number, maxKg: number) {
  return { mean: 0.3 + Math.sqrt(Math.log(maxKg / kg)), count: 1 };
}
