import type { LogReading } from './readLog.ts';
import type { SlipAsked } from './slipAsked.ts';

/** What the server found in a file of sets, and what of it was taken or would be. */
export interface LogFileAnswer extends Omit<LogReading, 'sets'> {
  /** `problems` are the first of them; this counts all. */
  problemCount: number;
  added: number;
  alreadyThere: number;
  /** New sets that look as if their bars had been written down in another unit. */
  slips: SlipAsked[];
  firstOn: string | null;
  lastOn: string | null;
  /** Names. */
  lifters: string[];
  dryRun: boolean;
  seq: number;
}
