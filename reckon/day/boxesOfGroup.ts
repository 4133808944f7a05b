import { boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { Group, Place } from '#contract/records/day.ts';
import type { Box } from '#contract/records/gear.ts';

/** What each box of a group is built of, and the pieces that its racks would need more of at once than the club has. */
export interface GroupBoxes {
  /** The box first, then mats; empty without a box, and where the club cannot build the height. */
  stackOf(place: Place): string[];
  tooFew: PlanCaution[];
}

/**
 * Lifters of one rack take turns on the same pieces, racks are used at once: each rack in order builds its boxes of what the racks
 * before it have left, and where that does not do, as if all were there. Another order might now and then do with less.
 */
export function boxesOfGroup(gear: readonly Box[], group: Pick<Group, 'start' | 'places'>): GroupBoxes {
  const left = new Map(gear.map(({ id, pieces }) => [id, pieces]));
  const holding = new Map<string, string[]>();
  const short = new Set<string>();
  const stacks = new Map<string, string[]>();
  for (const [rackId, heights] of heightsByRack(group)) {
    const built = boxHeights(gear.map((piece) => ({ ...piece, pieces: Math.max(0, left.get(piece.id)!) })));
    const held = new Map<string, number>();
    for (const heightM of heights) {
      const box = boxOfHeight(built, heightM) ?? boxOfHeight(boxHeights(gear), heightM);
      if (box === undefined) continue;
      stacks.set(keyOf(rackId, heightM), box.words);
      for (const { piece, count } of box.stack) held.set(piece.id, Math.max(count, held.get(piece.id) ?? 0));
    }
    for (const [id, count] of held) {
      left.set(id, left.get(id)! - count);
      holding.set(id, [...(holding.get(id) ?? []), rackId]);
      if (left.get(id)! < 0) short.add(id);
    }
  }
  return {
    stackOf: (place) => {
      const { way, heightM } = startOf(group, place);
      return way === 'box' ? (stacks.get(keyOf(place.rackId, heightM ?? 0)) ?? []) : [];
    },
    tooFew: gear
      .filter(({ id }) => short.has(id))
      .map(({ id, pieces }) => ({
        code: 'tooFew',
        sort: 'box',
        gearId: id,
        rackIds: holding.get(id)!,
        has: pieces,
      })),
  };
}

function heightsByRack(group: Pick<Group, 'start' | 'places'>): Map<string, Set<number>> {
  const heights = new Map<string, Set<number>>();
  for (const place of group.places) {
    const { way, heightM } = startOf(group, place);
    if (way !== 'box' || heightM === null) continue;
    heights.set(place.rackId, (heights.get(place.rackId) ?? new Set()).add(heightM));
  }
  return heights;
}

function keyOf(rackId: string, heightM: number): string {
  return `${rackId} ${Math.round(1000 * heightM)}`;
}
