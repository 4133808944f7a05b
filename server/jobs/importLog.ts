import { againstLog } from '#contract/log/againstLog.ts';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import { readLog } from '#contract/log/readLog.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** A file of sets: the header of the file for each column, or null where they look like ours. */
export interface ImportAsked {
  text: string;
  columns: Record<string, unknown> | null;
  /** Only look; change nothing. */
  dryRun: boolean;
}

export type ImportLog = (store: ClubStore, asked: ImportAsked) => Promise<LogFileAnswer>;

/** More than anybody mends before looking again. */
const shownProblems = 50;

/** Takes a file in, whole or, where anything in it is wrong, not at all. A set that the log has is passed over. */
export const importLog: ImportLog = async (store, { text, columns, dryRun }) => {
  const { records, seq } = await store.records();
  const { sets, problems, ...file } = readLog(text, columns, records, await store.today());
  const dates = sets.map(({ doneOn }) => doneOn).toSorted();
  const [firstOn = null, lastOn = null] = [dates[0], dates.at(-1)];
  const log =
    firstOn === null || lastOn === null ? [] : await store.loggedSets({ from: firstOn, to: lastOn });
  const { fresh, alreadyThere } = againstLog(sets, log);
  const ids = new Set(sets.map(({ lifterId }) => lifterId));
  const takes = !dryRun && problems.length === 0 && fresh.length > 0;
  return {
    ...file,
    problems: problems.slice(0, shownProblems),
    problemCount: problems.length,
    added: fresh.length,
    alreadyThere,
    firstOn,
    lastOn,
    lifters: records.lifter.filter(({ id }) => ids.has(id)).map(({ name }) => name),
    dryRun,
    seq: takes ? (await store.logSets(fresh)).seq : seq,
  };
};
