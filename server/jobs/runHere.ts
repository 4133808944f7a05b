import type { ClubStore } from '#store/ClubStore.ts';
import type { AnswerIn, AskedIn, Workplace } from './job.ts';
import { type JobName, type RunWork, type Work, work } from './jobs.ts';

type Jobs = {
  [Name in JobName]: {
    run(asked: AskedIn<Work, Name>, at: Workplace): Promise<AnswerIn<Work, Name>>;
  };
};

/** Runs jobs in this thread and on this store, which a command that waits for the answer may well block. */
export function runHere(store: ClubStore): RunWork {
  const jobs: Jobs = work.jobs;
  return (name, asked, { tell = () => {} } = {}) =>
    jobs[name].run(asked, { tell, throughDoor: (_door, use) => use(store) });
}
