import type { LnRatio, Share } from '../numeric/quantity.ts';
import { equipmentParameter, type ParameterName } from './parameters.ts';
import type { Rigging } from './Rigging.ts';
import type { SetEvidence } from './SetEvidence.ts';
import type { SetModel } from './setModel.ts';

/** Sets of one day that were alike: same rigging, mass, reps asked and made. Their errors of speed are partly shared. */
export interface EffortGroup {
  model: SetModel;
  rigging: Rigging;
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
  /** How much of an answer it is that a work-up ended here; 0: none. See `readWorkUps`. */
  topShare: Share;
  /** How much of an answer the places are where its misses stopped; see `readStops`. */
  stopShare: Share;
  /** ln strength still missing from the sets before, averaged, at the population's tiring; set by the first pass. */
  carriedLn: LnRatio;
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
  for (const i of order) put(sessions, sets[i]!, i, models[i]!);
  return sessions;
}

/** Sessions with one more set, the newest; those given stay as they are. */
export function sessionsWith(
  sessions: readonly Session[],
  set: SetEvidence,
  index: number,
  model: SetModel,
): Session[] {
  const copies = [...sessions];
  const newest = copies.pop();
  if (newest !== undefined) copies.push({ day: newest.day, groups: newest.groups.map(copyOf) });
  put(copies, set, index, model);
  return copies;
}

/** Puts a set that was done after all others into its session. */
function put(sessions: Session[], set: SetEvidence, index: number, model: SetModel): void {
  let session = sessions[sessions.length - 1];
  if (session?.day !== set.day) {
    session = { day: set.day, groups: [] };
    sessions.push(session);
  }
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
  add(group, set, index);
}

function copyOf(group: EffortGroup): EffortGroup {
  return {
    ...group,
    fastestMps: { ...group.fastestMps },
    peakMps: { ...group.peakMps },
    lastMps: { ...group.lastMps },
    reserve: { ...group.reserve },
    stopped: { ...group.stopped },
    restS: [...group.restS],
    members: [...group.members],
  };
}

function nothing(): Told {
  return { mean: 0, count: 0 };
}

function emptyGroup(set: SetEvidence, model: SetModel, missed: boolean): EffortGroup {
  return {
    model,
    rigging: set.rigging,
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
    topShare: 0,
    stopShare: 1,
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
