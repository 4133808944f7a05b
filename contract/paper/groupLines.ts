import type { PlanGroup, PlanPlace } from '#contract/day/dayPlan.ts';
import { type LineWords, lifterLine } from './lifterLine.ts';
import type { LifterLine } from './RackSheetModel.ts';

/** The lines of one rack of a group in lifting order. */
export function rackLines(group: PlanGroup, rackId: string, words: LineWords): LifterLine[] {
  const order = onRack(group, rackId);
  return order.flatMap((place, index) => {
    const before = order.length > 1 ? order.at(index - 1)! : null;
    const line = lifterLine(place, group, { place: before, isFirst: index === 0 }, words);
    return line === null ? [] : [line];
  });
}

/** Lifters of a rack by turn. The one before the first is the last: they lift in rotation. */
function onRack(group: PlanGroup, rackId: string): PlanPlace[] {
  return group.places.filter((place) => place.rackId === rackId).sort((a, b) => a.turn - b.turn);
}
