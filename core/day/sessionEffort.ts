import { repTable } from '#core/effort/repTable.ts';
import { type BlockOutcome, lastBlock } from '#core/effort/simulateSession.ts';
import type { Tiring } from '#core/effort/Tiring.ts';
import type { SessionBlock } from '#core/effort/walkSession.ts';
import { compileLoad, withBarKg } from '#core/load/compileLoad.ts';
import type { Capability } from '#core/rep/Capability.ts';
import type { SpeedCorrection } from '#core/rep/expectedSpeed.ts';
import type { GearSet, RackGear } from './Gear.ts';
import { gearLoad } from './gearLoad.ts';
import type { Travel } from './gearPull.ts';

/** A block of the day as it is done: so many sets of so many reps with this bar, each followed by the rest. */
export interface PlannedBlock {
  barKg: number;
  sets: number;
  reps: number;
  restS: number;
}

/** How one block goes, and what a shorter rest would make of it; null where the rest is short already. */
export interface BlockEffort extends BlockOutcome {
  shorterRest: { restS: number; lastMps: number | null; marginLn: number } | null;
}

/** So much less rest is looked at, and no rest shorter than this is proposed (s). */
const LESS_S = 30;
const SHORTEST_S = 15;

/**
 * The blocks of one lifter's day, one after the other from rested, with the same bands and chains and their own bars.
 * Null for all where some bar takes longer than anybody can strain.
 */
export function sessionEffort(
  task: { capability: Capability; travel: Travel; speedCorrection?: SpeedCorrection },
  tiring: Tiring,
  gear: RackGear,
  set: GearSet,
  blocks: readonly PlannedBlock[],
): BlockEffort[] | null {
  const anyBar = compileLoad(gearLoad(gear, set, task.travel, 0));
  const session: SessionBlock[] = [];
  for (const { barKg, sets, reps, restS } of blocks) {
    const alike = session.find(({ table }) => table.compiled.load.barKg === barKg);
    const table = alike?.table ?? repTable(withBarKg(anyBar, barKg), task.capability, tiring.loweringS);
    if (table === null) return null;
    session.push({ table, sets, reps, restS });
  }
  return session.map((_, index) => {
    const upTo = session.slice(0, index + 1);
    return {
      ...lastBlock(upTo, tiring, task.speedCorrection),
      shorterRest: shorterRest(upTo, tiring, task.speedCorrection),
    };
  });
}

/** The last of the blocks with less rest between its sets. */
function shorterRest(
  session: readonly SessionBlock[],
  tiring: Tiring,
  correction?: SpeedCorrection,
): BlockEffort['shorterRest'] {
  const block = session[session.length - 1]!;
  const restS = block.restS - LESS_S;
  if (block.sets === 1 || restS < SHORTEST_S) return null;
  const { lastMps, marginLn } = lastBlock([...session.slice(0, -1), { ...block, restS }], tiring, correction);
  return { restS, lastMps, marginLn };
}
