import type { OtherSetup } from '#contract/otherSetup.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import { explain } from '#core/day/explain.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { plates } from '#core/day/plates.ts';
import { runnersUpTo } from '#core/day/runnersUp.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, bandLimitsOf, searchRulesOf } from './assembleRackGear.ts';
import { expectedOf } from './expectedOf.ts';
import { fixedByCoach } from './fixedByCoach.ts';
import { lightenedTo, workWith } from './plannedWork.ts';
import { setInWords } from './setInWords.ts';

/** As many as a coach compares at a glance. */
const MOST = 3;

/**
 * What else would do for one lifter, best first, beside the setup that stands. Each is made as likely as the group asks, like
 * that one. A bar that the coach fixed stays while the bands are free; once both are fixed, both are open again.
 */
export function otherSetups(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  standing: Pick<PrescribedSetup, 'set' | 'barKg'>,
): OtherSetup[] {
  const { task, heights } = assembled;
  const fixed = fixedByCoach(place, rack.gear);
  const barKg = fixed.set === null ? fixed.barKg : null;
  const rules = searchRulesOf(records, group);
  const isLightened = barKg === null && (group.leastChance ?? null) !== null;
  return runnersUpTo(standing, task, rack.gear, barKg, rules, MOST).map((one): OtherSetup => {
    const loadedKg = isLightened ? likelyKg(records, group, place, assembled, rack, one) : one.barKg;
    const explained = { ...task, heightSpread: heights };
    const { shares, percentages, firstRep } = explain(
      explained,
      rack.gear,
      one.set,
      loadedKg,
      bandLimitsOf(records),
    );
    const expected = () => expectedOf(records, group, place, assembled, rack, one.set)(loadedKg, 0, null);
    return {
      set: setInWords(records, rack, one.set),
      barKg: loadedKg,
      shareAtBottom: shares[0]!.share,
      shareAtLockout: shares.at(-1)!.share,
      percentages: percentages.map(({ basis, share }) => ({ basis, share })),
      firstMps: task.aim.by === 'speed' ? (expected().firstMps?.median ?? firstRep.meanSpeedMps) : null,
      speaksFor: one.speaksFor,
    };
  });
}

/** The bar of the aim, as far lightened as the group asks. */
function likelyKg(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  { set, barKg }: PrescribedSetup,
): number {
  const workAt = workWith(records, group, place, assembled, rack, set);
  const loadableKg = (targetKg: number) => plates({ targetKg, ...rack.gear }).loadedKg;
  return lightenedTo(group.leastChance ?? 0, workAt(barKg), workAt, loadableKg).barKg;
}
