import type { PlanBlock } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Block, Group, Place } from '#contract/records/day.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { gearLoad } from '#core/day/gearLoad.ts';
import type { BlockEffort } from '#core/day/sessionEffort.ts';
import { compileLoad, withBarKg } from '#core/load/compileLoad.ts';
import { chanceToSpare } from '#core/strength/askDraws.ts';
import { beliefOf } from '#core/strength/belief.ts';
import { chanceInZone } from '#core/strength/chanceInZone.ts';
import { chanceOfWork } from '#core/strength/chanceOfWork.ts';
import { centralDraw } from '#core/strength/drawCapability.ts';
import { liftModelOf } from '#core/strength/estimateStrength.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { type SpeedSpread, speedBeforeLog } from '#core/strength/speedBeforeLog.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import { drawsIn } from '#reckon/strength/estimatedCapability.ts';
import { competitionSetup, riggingOf } from '#reckon/strength/riggingOf.ts';
import type { AssembledPlace } from './assemblePlace.ts';
import type { AssembledRack } from './assembleRackGear.ts';

type Expected = NonNullable<PlanBlock['expected']>;
type ExpectedOf = (barKg: number, effort: BlockEffort, block: Block) => Expected;

/**
 * What is to be expected of a block with a bar and this set, by its margins of strength and its told speeds: by the lifter's
 * whole log, and without an estimate by how well the strength is known, with the scatter of most lifters.
 */
export function expectedOf(
  records: ClubRecords,
  group: Group,
  place: Place,
  assembled: AssembledPlace,
  { gear }: AssembledRack,
  set: GearSet,
): ExpectedOf {
  return assembled.strength.estimate === null
    ? beforeLog(group, assembled, gear, set)
    : byLog(records, group, place, assembled, gear, set);
}

type Zone = NonNullable<Expected['zone']>;

/** The told speed that an aim at a speed is about; null for another aim, a lighter step and a missed rep. */
function askedZone(
  aim: Group['aim'],
  { firstMps, setMps }: BlockEffort,
  { shareOfAim }: Block,
): Omit<Zone, 'chance'> | null {
  if (aim.by !== 'speed' || shareOfAim !== 1 || firstMps === 0) return null;
  const { fromMps, toMps, of = 'firstRep' } = aim;
  const mps = of === 'set' ? setMps : firstMps;
  return mps === null ? null : { of, fromMps, toMps, mps };
}

function beforeLog(
  { lift, aim }: Group,
  { task, strength }: AssembledPlace,
  gear: AssembledRack['gear'],
  set: GearSet,
): ExpectedOf {
  const { capability, speedCorrection, known, strengthSdLn } = strength;
  const { mean, sd } = populationPrior(lift);
  const average = { ...mean, lnTotal: 0 };
  const chance = (spareLn: number) => chanceToSpare(spareLn, average, strengthSdLn);
  const anyBar = compileLoad(gearLoad(gear, set, task.travel, 0));
  return (barKg, effort, block) => {
    const { marginLn, shorterRest, tiredLn, firstMps } = effort;
    // How soon a set slows is known as roughly as how soon lifters tire.
    const chanceBeforeLog = (asked: Omit<Zone, 'chance'>, { perLnMps, sdMps }: SpeedSpread) =>
      chanceInZone(
        asked,
        { mps: asked.mps, perLnMps },
        mean.lnDaySd,
        Math.hypot(sdMps, sd.lnTiring * (firstMps - asked.mps)),
      );
    const zone = askedZone(aim, effort, block);
    const tired = { ...capability, strengthN: capability.strengthN * Math.exp(-tiredLn) };
    const spread =
      zone === null
        ? null
        : speedBeforeLog(lift, withBarKg(anyBar, barKg), tired, speedCorrection, strengthSdLn);
    return {
      chanceAllReps: chance(marginLn),
      chanceShorterRest: shorterRest && chance(shorterRest.marginLn),
      firstMps: null,
      zone: zone && spread && { ...zone, chance: chanceBeforeLog(zone, spread) },
      goesBy: known === 'assumed' ? 'bodyMass' : 'best',
    };
  };
}

function byLog(
  records: ClubRecords,
  { lift, aim }: Group,
  { lifterId }: Place,
  { start, task, strength }: AssembledPlace,
  gear: AssembledRack['gear'],
  set: GearSet,
): ExpectedOf {
  const { capability } = strength;
  const estimate = strength.estimate!;
  const draws = drawsIn(estimate);
  const central = centralDraw(draws);
  const liftModel = liftModelOf(
    lift,
    riggingOf(records, lifterId, lift, competitionSetup(lift), estimate.on),
  );
  const asked = {
    rigging: {
      load: gearLoad(gear, set, task.travel, 0),
      start: start.way,
      range: capability.range,
    },
    movedBodyKg: capability.movedBodyKg,
    equipment: recordById(records, 'lifter', lifterId).equipment,
    platform: false,
  };
  return (barKg, effort, block) => {
    const marginsLn = [effort.marginLn, ...(effort.shorterRest ? [effort.shorterRest.marginLn] : [])];
    const reps = aim.by === 'speed' && aim.of === 'set' ? block.reps : 1;
    const { chancesAllReps, sets } = chanceOfWork(
      liftModel,
      asked,
      { barKg, reps, marginsLn },
      central,
      draws,
    );
    const [chanceAllReps, chanceShorterRest = null] = chancesAllReps;
    const zone = askedZone(aim, effort, block);
    const firstMps = about(
      effort.firstMps,
      sets.map((each) => each.firstMps),
    );
    const chanceByLog = (asked: Omit<Zone, 'chance'>) => {
      const speeds = about(
        asked.mps,
        sets.map(({ setMps }) => setMps),
      );
      const chances = sets.map(({ perLnMps }, i) =>
        chanceInZone(asked, { mps: speeds[i]!, perLnMps }, draws[i]!.lnDaySd),
      );
      return chances.reduce((sum, chance) => sum + chance, 0) / chances.length;
    };
    return {
      chanceAllReps: chanceAllReps!,
      chanceShorterRest,
      firstMps: beliefOf(firstMps),
      zone: zone && { ...zone, chance: chanceByLog(zone) },
      goesBy: 'log',
    };
  };
}

/** Speeds of all answers moved so that their middle is the speed that every output tells. */
function about(toldMps: number, speedsMps: readonly number[]): number[] {
  const shiftMps = toldMps - beliefOf(speedsMps).median;
  return speedsMps.map((mps) => Math.max(0, mps + shiftMps));
}
