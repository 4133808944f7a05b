import type { OtherSetup } from '#contract/day/otherSetup.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Aim, Group, Place } from '#contract/records/day.ts';
import { explain } from '#core/day/explain.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { plates } from '#core/day/plates.ts';
import { rankSetups } from '#core/day/rankSetups.ts';
import { runnersUpTo } from '#core/day/runnersUp.ts';
import type { SetupRanking } from '#core/day/SetupRanking.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, bandLimitsOf, searchRulesOf } from './assembleRackGear.ts';
import { fixedByCoach } from './fixedByCoach.ts';
import { type LoadedBlock, lightenedTo, loadedWith, workWith } from './plannedWork.ts';
import { setInWords } from './setInWords.ts';

/** As many as a coach compares at a glance. */
const MOST = 3;

/**
 * What else would do for one lifter, best first, beside the setup that stands. Each is made as likely as the group asks, like
 * that one. `ranked`: the place's sets. A bar that the coach fixed stays while the bands are free; once both are fixed, both are open again.
 */
export function otherSetups(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  standing: Pick<PrescribedSetup, 'set' | 'barKg'>,
  ranked: SetupRanking,
): OtherSetup[] {
  const { task, heights } = assembled;
  const fixed = fixedByCoach(place, rack.gear);
  const barKg = fixed.set === null ? fixed.barKg : null;
  const rules = searchRulesOf(records, group);
  const isLightened = barKg === null && (group.leastChance ?? null) !== null;
  const loadableKg = (targetKg: number) => plates({ targetKg, ...rack.gear }).loadedKg;
  const ranking = fixed.set === null ? ranked : rankSetups(task, rack.gear, { barKg, set: null }, rules);
  const takenKg = ({ set, barKg: askedKg }: PrescribedSetup) => {
    if (!isLightened) return askedKg;
    const workAt = workWith(records, group, place, assembled, rack, set);
    return lightenedTo(group.leastChance ?? 0, workAt(askedKg), workAt, loadableKg).barKg;
  };
  const explained = { ...task, heightSpread: heights };
  const limits = bandLimitsOf(records);
  return runnersUpTo(standing, task, rack.gear, rules, ranking, MOST, takenKg).map((one): OtherSetup => {
    const { shares, percentages } = explain(explained, rack.gear, one.set, one.barKg, limits);
    return {
      set: setInWords(records, rack, one.set),
      barKg: one.barKg,
      shareAtBottom: shares[0]!.share,
      shareAtLockout: shares.at(-1)!.share,
      percentages: percentages.map(({ basis, share }) => ({ basis, share })),
      aimedMps:
        group.aim.by === 'speed'
          ? aimedMps(group, group.aim, loadedWith(group, assembled, rack, one.set)(one.barKg))
          : null,
      speaksFor: one.speaksFor,
    };
  });
}

/** The speed that the aim is about, as it will be told once the bar is taken; null where no step lifts all of it. */
function aimedMps(
  group: Group,
  { of }: Extract<Aim, { by: 'speed' }>,
  blocks: readonly LoadedBlock[],
): number | null {
  const effort = blocks[group.blocks.findLastIndex(({ shareOfAim }) => shareOfAim === 1)]?.effort;
  return (of === 'set' ? effort?.setMps : effort?.firstMps) ?? null;
}
