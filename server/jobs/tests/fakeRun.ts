import type { AnswerIn, AskedIn, HowRun } from '#server/jobs/job.ts';
import type { JobName, RunWork, Work } from '#server/jobs/jobs.ts';

type Fakes = {
  [Name in JobName]?: (asked: AskedIn<Work, Name>, how: HowRun) => Promise<AnswerIn<Work, Name>>;
};

/** Runs these in the place of the jobs that have their names; others must not be asked for. */
export function fakeRun(fakes: Fakes): RunWork {
  return (name, asked, how = {}) => {
    const fake = fakes[name];
    if (!fake) throw new Error(`Nobody should ask for ${name}.`);
    return fake(asked, how);
  };
}
