import { boxHeights, boxOfHeight } from '#contract/day/boxHeights.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { startOf } from '#contract/day/startOf.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';

/** What each box of a group is built of, and the pieces that its racks would need more of at once than the club has. */
export interface GroupBoxes {
  /** The box first, then mats; empty without a box, and where the club cannot build the height. */
  stackOf(place: Place): string[];
  tooFew: PlanCaution[];
}

/**
 * Lifters of one rack take turns on the same pieces, racks are used at once: each rack, in the club's order, builds its boxes of what
 * the racks before it have left, and where that does not do, as if all were there. Another order might now and then do with less.
 */
export function boxesOfGroup(
  { box: gear, rack: racks }: Pick<ClubRecords, 'box' | 'rack'>,
  group: Pick<Group, 'start' | 'places'>,
): GroupBoxes {
  const left = new Map(gear.map(({ id, pieces }) => [id, pieces]));
  const holding = new Map<string, string[]>();
  const stacks = new Map<string, string[]>();
  for (const { id: rackId } of racks) {
    const built = boxHeights(gear.map((piece) => ({ ...piece, pieces: left.get(piece.id)! })));
    const held = new Map<string, number>();
    for (const heightM of heightsAt(rackId, group)) {
      const box = boxOfHeight(built, heightM) ?? boxOfHeight(boxHeights(gear), heightM);
      if (box === undefined) continue;
      stacks.set(keyOf(rackId, heightM), box.words);
      for (const { piece, count } of box.stack) held.set(piece.id, Math.max(count, held.get(piece.id) ?? 0));
    }
    for (const [id, count] of held) {
      left.set(id, left.get(id)! - count);
      holding.set(id, [...(holding.get(id) ?? []), rackId]);
    }
  }
  return {
    stackOf: (place) => {
      const heightM = boxOf(place, group);
      return heightM === null ? [] : (stacks.get(keyOf(place.rackId, heightM)) ?? []);
    },
    tooFew: gear
      .filter(({ id }) => left.get(id)! < 0)
      .map(({ id, pieces }) => ({
        code: 'tooFew',
        sort: 'box',
        gearId: id,
        rackIds: holding.get(id)!,
        has: pieces,
      })),
  };
}

function heightsAt(rackId: string, group: Pick<Group, 'start' | 'places'>): number[] {
  return group.places.flatMap((place) => {
    const heightM = place.rackId === rackId ? boxOf(place, group) : null;
    return heightM === null ? [] : [heightM];
  });
}

function boxOf(place: Place, group: Pick<Group, 'start'>): number | null {
  const { way, heightM } = startOf(group, place);
  return way === 'box' ? heightM : null;
}

function keyOf(rackId: string, heightM: number): string {
  return `${rackId} ${Math.round(1000 * heightM)}`;
}
