import type { LifterLine } from '#contract/paper/RackSheetModel.ts';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Day, Group, Place } from '#contract/records/day.ts';
import type { LastTimeWords } from './lastTime/useLastTime.ts';
import type { Solving } from './useSolving.ts';

/** A lifter's place in a rack's order with all that the day knows of it: made once for its row, read by whatever opens from there. */
export interface Seat {
  day: Day;
  group: Group;
  place: Place;
  name: string;
  rack: RecordOf<'rack'>;
  /** The racks of the group. */
  rackIds: readonly string[];
  /** In lifting order, from 0. */
  order: number;
  /** What was worked out; null: nothing yet, or `problem` says why nothing could be. */
  line: LifterLine | null;
  problem: string | null;
  /** Why what was worked out no longer stands, a sentence each; null: it stands. */
  overtaken: readonly string[] | null;
  /** The last time, where it is to stand beside this time. */
  lastTime: LastTimeWords | null;
  gravityMps2: number;
  solving: Solving;
}
