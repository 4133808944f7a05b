import type { PlanBlock, PlanPlace } from '#contract/day/dayPlan.ts';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import { explain } from '#core/day/explain.ts';
import type { GearSet } from '#core/day/Gear.ts';
import type { PrescribedSetup } from '#core/day/PrescribedSetup.ts';
import { plates } from '#core/day/plates.ts';
import { volumeCautions } from '#core/day/prilepin.ts';
import { rankSetups } from '#core/day/rankSetups.ts';
import type { SetupRanking } from '#core/day/SetupRanking.ts';
import type { BlockEffort } from '#core/day/sessionEffort.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import { type AssembledRack, bandLimitsOf, searchRulesOf } from './assembleRackGear.ts';
import { fixedByCoach } from './fixedByCoach.ts';
import { notWeighed } from './notWeighed.ts';
import { otherSetups } from './otherSetups.ts';
import { outsideZone } from './outsideZone.ts';
import { placeCautions } from './placeCautions.ts';
import { chanceOfDay, lightenedTo, type PlannedWork, workWith } from './plannedWork.ts';
import { restrictionCautions } from './restricted.ts';
import { searchFindings } from './searchFindings.ts';
import { setInWords } from './setInWords.ts';
import { strengthCautions } from './strengthCautions.ts';
import { belowShareOf } from './sureStrength.ts';

/** A bar set by hand this near to a loadable mass (kg) means that one: 110 on the faces may weigh 109.9. */
const SAME_BAR_KG = 0.25;

type Solved = NonNullable<PlanPlace['solved']>;

/**
 * What was allocated to one lifter, with the whole explanation of every block. `ranked`: the place's sets where the day has ranked them already. A bar
 * that is kept is not made lighter. Where the setup is `chosenAlone`, no others are proposed beside it.
 */
export function describePlace(
  records: ClubRecords,
  on: string,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  rack: AssembledRack,
  chosen: PrescribedSetup,
  {
    ranked = null,
    barIsKept = false,
    chosenAlone = false,
  }: { ranked?: SetupRanking | null; barIsKept?: boolean; chosenAlone?: boolean } = {},
): Solved {
  const { task, heights, strength, sure, reference } = assembled;
  const { set, barKg: wantedKg, misfit } = chosen;
  const limits = bandLimitsOf(records);
  const ranking =
    ranked ?? rankSetups(task, rack.gear, fixedByCoach(place, rack.gear), searchRulesOf(records, group));
  const nearestKg = plates({ targetKg: wantedKg, ...rack.gear }).loadedKg;
  const isLoadable = Math.abs(nearestKg - wantedKg) <= SAME_BAR_KG;
  const askedKg = isLoadable ? nearestKg : wantedKg;
  const workAt = workWith(records, group, place, assembled, rack, set);
  const asked = workAt(askedKg);
  // An undo can bring back a day from before this field existed; then there is no value.
  const leastChance = group.leastChance ?? null;
  const byHand = (place.byCoach?.barKg ?? null) !== null;
  const work =
    leastChance === null || byHand || barIsKept
      ? asked
      : lightenedTo(leastChance, asked, workAt, (kg) => plates({ targetKg: kg, ...rack.gear }).loadedKg);
  const blocks = group.blocks.map((block, i): PlanBlock => {
    const { loaded, effort, expected } = work.blocks[i]!;
    const { loadedKg, perSide } = loaded;
    const explanation = explain(task, rack.gear, set, loadedKg, limits, effort?.tiredLn);
    return {
      ...block,
      barKg: loadedKg,
      perSide: perSide.map(({ massKg, count }) => ({
        massKg,
        count,
        faceMassKg: rack.discs.find((disc) => disc.massKg === massKg)?.faceMassKg ?? massKg,
      })),
      nominalKg: nominalKg(records, rack, set, loadedKg),
      explanation: {
        ...explanation,
        cautions: [...explanation.cautions, ...effortCautions(block.sets, effort)],
      },
      effort,
      expected,
    };
  });
  const volume = blocks.map(({ sets, reps, explanation }) => ({
    sets,
    reps,
    share: explanation.percentages.find(({ basis }) => basis === 'mean')!.share,
  }));
  const setByHand = (place.byCoach?.bands ?? place.byCoach?.chains ?? null) !== null;
  const outside = outsideZone(records, group, assembled, rack, ranking, work, {
    barKg: askedKg,
    referenceKg: reference.kg,
    byHand: byHand || setByHand,
  });
  const cautions: PlanCaution[] = [
    ...restrictionCautions(assembled.restrictions, reference.kg, blocks, task.travel.gravityMps2),
    ...placeCautions(records, place, assembled, rack, set, on),
    ...notWeighed(records, rack, blocks),
    ...(byHand ? [] : strengthCautions(group, assembled)),
    ...(isLoadable ? [] : [{ code: 'notLoadable', wantedKg, nearestKg } as const]),
    ...searchFindings(records, group, place, assembled, rack, chosen, ranking, on),
    ...(outside === null ? [] : [outside]),
    ...chanceCautions(group, asked, work),
    ...volumeCautions(volume),
  ];
  return {
    set: setInWords(records, rack, set),
    barKg: work.barKg,
    byCoach: {
      bar: byHand,
      set: setByHand,
    },
    misfit,
    reference,
    heights: { bottomM: heights.bottomM, lockoutM: heights.lockoutM, known: heights.known },
    strength: {
      known: strength.known,
      sdLn: strength.strengthSdLn,
      belowShare: belowShareOf(sure),
      setCount: strength.estimate?.setCount ?? null,
      maxKg: strength.estimate?.maxKg.median ?? null,
      lifter: { capability: strength.capability, speedCorrection: strength.speedCorrection },
    },
    blocks,
    cautions,
    others: chosenAlone
      ? []
      : otherSetups(records, group, place, assembled, rack, { set, barKg: work.barKg }, ranking),
  };
}

/** Of work that is not to be missed; a maximal lift is more likely made than not. */
const LIKELY: Record<Group['work'], number> = { speed: 0.9, repeated: 0.8, maximal: 0.5 };

function chanceCautions(
  { work: kind, leastChance }: Group,
  asked: PlannedWork,
  done: PlannedWork,
): PlanCaution[] {
  const chance = chanceOfDay(done);
  if (chance === null) return [];
  if (done.barKg < asked.barKg) return [{ code: 'madeLighter', fromKg: asked.barKg, chance }];
  return chance < (leastChance ?? LIKELY[kind]) ? [{ code: 'unlikely', chance }] : [];
}

/** A missed first rep is said by the explanation already. */
function effortCautions(sets: number, effort: BlockEffort | null): PlanCaution[] {
  const missed = effort?.missed;
  if (!missed || (missed.set === 1 && missed.rep === 1)) return [];
  return [{ code: 'notAllReps', set: missed.set, rep: missed.rep, sets }];
}

/** Trade habit adds a number for each pair to the bar; null as soon as one pair has none. */
function nominalKg(
  records: ClubRecords,
  { gear }: AssembledRack,
  set: GearSet,
  barKg: number,
): number | null {
  return set.hookups.reduce<number | null>((sum, index) => {
    const { nominalKg } = recordById(records, 'bandPair', gear.hookups[index]!.pairId);
    return sum === null || nominalKg === null ? null : sum + nominalKg;
  }, barKg);
}
