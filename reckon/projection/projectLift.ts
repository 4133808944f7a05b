import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { MeetDay } from '#core/projection/meetDay.ts';
import { beliefOf } from '#core/strength/belief.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { foretell, type MeetPlan, meetDayBelief } from './foretell.ts';
import { rulesOfThumb } from './rulesOfThumb.ts';

/** Attempts rise by so much at least: common practice of kilogram meets, no source. */
const STEP_KG = 2.5;
/** The table begins and ends where the chance leaves these. */
const NEARLY_SURE = 0.98;
const NEARLY_OUT = 0.03;

/** One lift on the day of a meet, with what the rules of thumb say beside it. */
export function projectLift(
  records: LoadRecords & Pick<ClubRecords, 'best'>,
  log: readonly LoggedSet[],
  estimate: StrengthEstimate,
  plan: MeetPlan,
): LiftProjection {
  const { lifterId, lift, on: from, bodyMassKg, draws } = estimate;
  const day = foretell(estimate, plan);
  return {
    lifterId,
    lift,
    on: plan.on,
    from,
    equipment: plan.equipment,
    taperShare: plan.taperShare,
    bodyMassKg,
    maxKg: meetDayBelief(day),
    chances: chancesOf(day),
    platformShare: beliefOf(draws.map(({ platform }) => Math.expm1(platform!))),
    meets: meetsOf(records, log, estimate),
    ...rulesOfThumb(records, log, { lifterId, lift, equipment: plan.equipment, on: plan.on }),
  };
}

function chancesOf({ chanceAt, barAt }: MeetDay): LiftProjection['chances'] {
  const first = STEP_KG * Math.max(1, Math.floor(barAt(1 - NEARLY_SURE) / STEP_KG));
  const last = STEP_KG * Math.ceil(barAt(1 - NEARLY_OUT) / STEP_KG);
  return Array.from({ length: Math.round((last - first) / STEP_KG) + 1 }, (_, i) => {
    const barKg = first + i * STEP_KG;
    return { barKg, chance: chanceAt(barKg) };
  });
}

function meetsOf(
  { best }: Pick<ClubRecords, 'best'>,
  log: readonly LoggedSet[],
  { lifterId, lift, on }: StrengthEstimate,
): number {
  const counting = [...best, ...log.filter(({ struckAt }) => struckAt === null)].filter(
    (done) => done.platform && done.lifterId === lifterId && done.lift === lift && done.doneOn <= on,
  );
  return new Set(counting.map(({ doneOn }) => doneOn)).size;
}
