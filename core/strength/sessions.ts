import { equipmentParameter, type ParameterName } from './parameters.ts';
import type { SetEvidence } from './SetEvidence.ts';
import type { SetModel } from './setModel.ts';

/** Sets of one day that were alike: same rigging, mass, reps asked and made. Their errors of speed are partly shared. */
export interface EffortGroup {
  model: SetModel;
  equipment: ParameterName | null;
  platform: boolean;
  made: number;
  missed: boolean;
  /** How many sets. */
  count: number;
  /** Mean over the sets of the fastest rep's speed, and of the last rep's where each rep was measured. */
  fastestMps: Told;
  peakMps: Told;
  lastMps: Told;
  reserve: Told;
  stopped: Told;
  /** ln strength still missing from the sets before, averaged, at the population's tiring; set by the first pass. */
  carriedLn: number;
  /** Rest before each of the sets (s), in order; and which sets they are. */
  restS: number[];
  members: number[];
}

/** The mean of what `count` sets told; `count` 0: nothing. */
export interface Told {
  mean: number;
  count: number;
}

export interface Session {
  day: number;
  groups: EffortGroup[];
}

/** Rest where nobody wrote it down (s): assumption. */
const ASSUMED_REST_S = 180;

/** Days with their sets, alike ones together, oldest first. `models[i]` belongs to `sets[i]`; null: left out. */
export function sessionsOf(sets: readonly SetEvidence[], models: readonly (SetModel | null)[]): Session[] {
  const order = sets.map((_, i) => i).filter((i) => models[i] !== null);
  order.sort((a, b) => sets[a]!.day - sets[b]!.day || a - b);
  const sessions: Session[] = [];
  for (const i of order) {
    const set = sets[i]!;
    let session = sessions[sessions.length - 1];
    if (session?.day !== set.day) {
      session = { day: set.day, groups: [] };
      sessions.push(session);
    }
    const model = models[i]!;
    const missed = set.made < set.reps;
    // Only neighbours are put together, so that what was carried over from set to set stays in order.
    const last = session.groups[session.groups.length - 1];
    const alike =
      last !== undefined &&
      last.model === model &&
      last.made === set.made &&
      last.missed === missed &&
      last.platform === set.platform &&
      last.equipment === equipmentParameter[set.equipment];
    const group = alike ? last : emptyGroup(set, model, missed);
    if (!alike) session.groups.push(group);
    add(group, set, i);
  }
  return sessions;
}

function emptyGroup(set: SetEvidence, model: SetModel, missed: boolean): EffortGroup {
  const nothing = () => ({ mean: 0, count: 0 });
  return {
    model,
    equipment: equipmentParameter[set.equipment],
    platform: set.platform,
    made: set.made,
    missed,
    count: 0,
    fastestMps: nothing(),
    peakMps: nothing(),
    lastMps: nothing(),
    reserve: nothing(),
    stopped: nothing(),
    carriedLn: 0,
    restS: [],
    members: [],
  };
}

function add(group: EffortGroup, set: SetEvidence, index: number): void {
  group.count++;
  group.members.push(index);
  group.restS.push(set.restS ?? ASSUMED_REST_S);
  const { meanSpeedsMps, peakSpeedsMps } = set;
  if (set.made > 0 && meanSpeedsMps.length > 0) tell(group.fastestMps, Math.max(...meanSpeedsMps));
  else if (set.made > 0 && peakSpeedsMps.length > 0) tell(group.peakMps, Math.max(...peakSpeedsMps));
  if (set.made > 1 && meanSpeedsMps.length === set.made) tell(group.lastMps, meanSpeedsMps[set.made - 1]!);
  if (set.repsInReserve !== null && set.made > 0 && !group.missed) tell(group.reserve, set.repsInReserve);
  if (group.missed && set.stoppedAtS !== null) tell(group.stopped, set.stoppedAtS);
}

function tell(told: Told, value: number): void {
  told.count++;
  told.mean += (value - told.mean) / told.count;
}
