import type { Tell } from '#contract/words/doing.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { ClubDoor } from './clubDoor.ts';

/** What a job finds where it runs. */
export interface Workplace {
  tell: Tell;
  /** Opens the club for as long as `work` takes. */
  throughDoor<Result>(door: ClubDoor, work: (store: ClubStore) => Promise<Result>): Promise<Result>;
}

/** A calculation that takes long. What it is asked and what it answers are data that can travel between threads. */
export interface Job<Asked, Answer> {
  /** Where it runs, one after another with the other jobs of this lane. */
  lane: string;
  run(asked: Asked, at: Workplace): Promise<Answer>;
}

export interface Lane {
  threads: number;
  /** So long a thread stays that nothing is asked of; a new one has to read and translate its code first. */
  keepWarmMs: number;
  /** Whoever writes to the club waits for what its jobs hold: so they do not give way to what else goes on. */
  isWaitedFor?: boolean;
}

/** Jobs by their names. */
export interface JobTable {
  /** Address of the module that exports this table as `work`: threads read it there. */
  module: string;
  lanes: Readonly<Record<string, Lane>>;
  jobs: Readonly<Record<string, Job<never, unknown>>>;
}

/** The table as given, where no job names a lane that is not there. */
export function jobTable<
  Lanes extends Record<string, Lane>,
  Jobs extends Record<string, Job<never, unknown> & { lane: keyof Lanes }>,
>(table: { module: string; lanes: Lanes; jobs: Jobs }): { module: string; lanes: Lanes; jobs: Jobs } {
  return table;
}

export type NameIn<Table extends JobTable> = keyof Table['jobs'] & string;
export type AskedIn<Table extends JobTable, Name extends NameIn<Table>> = Parameters<
  Table['jobs'][Name]['run']
>[0];
export type AnswerIn<Table extends JobTable, Name extends NameIn<Table>> = Awaited<
  ReturnType<Table['jobs'][Name]['run']>
>;

export interface HowRun {
  /** Ends the job, whose promise then fails at once. */
  signal?: AbortSignal | undefined;
  tell?: Tell | undefined;
}

/** Runs a job by its name. */
export type RunIn<Table extends JobTable> = <Name extends NameIn<Table>>(
  name: Name,
  asked: AskedIn<Table, Name>,
  how?: HowRun,
) => Promise<AnswerIn<Table, Name>>;
