import type { PlanGroup } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { rackLines } from '#contract/paper/groupLines.ts';
import type { LineWords } from '#contract/paper/lifterLine.ts';
import { lineWords } from '#contract/paper/lineWords.ts';
import type { LifterLine } from '#contract/paper/RackSheetModel.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { wordsOf } from '#reckon/day/wordsOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

export type GroupLines = ReturnType<typeof useLines>;

/** What was worked out for a group, lifter by lifter and rack by rack, in the words of this view. */
export function useLines(prescription: SignedPrescription | null, groupId: string) {
  const plan = prescription?.document ?? null;
  const records = useClub();
  const units = useUnits();
  const words = plan && lineWords(plan, wordsOf(plan, records), units);
  const group = plan?.groups.find((candidate) => candidate.groupId === groupId) ?? null;
  const lines = group && words ? group.racks.flatMap((rack) => rackLines(group, rack.rackId, words)) : [];
  const placeOf = (lifterId: string) => group?.places.find((place) => place.lifterId === lifterId) ?? null;
  return {
    placeOf,
    /** As it was worked out. */
    plan: group,
    of: (lifterId: string): LifterLine | null => lines.find((line) => line.lifterId === lifterId) ?? null,
    /** Why nothing could be worked out for a lifter. */
    problemOf: (lifterId: string): string | null => placeOf(lifterId)?.problem ?? null,
    gravityMps2: plan?.gravityMps2 ?? STANDARD_GRAVITY_MPS2,
    rackSays: (rackId: string): string => {
      const rack = group?.racks.find((candidate) => candidate.rackId === rackId);
      if (rack === undefined) return '';
      if (rack.changes === 0) return `${rack.bar}. No band changes between lifters.`;
      const changes = rack.changes === 1 ? '1 pair is changed' : `${rack.changes} pairs are changed`;
      return `${rack.bar}. ${changes} while everybody lifts once, about ${Math.round(rack.handlingMinutes)} min.`;
    },
    cautions: words && group ? cautionsOf(group, lines, words) : [],
  };
}

/** What everybody of the group must know. */
function cautionsOf({ cautions }: PlanGroup, lines: readonly LifterLine[], { say }: LineWords): string[] {
  const hangsBands = lines.some((line) => line.hung.length > 0);
  return [...(hangsBands ? [say({ code: 'bandsUnderLoad' })] : []), ...cautions.map(say)];
}
