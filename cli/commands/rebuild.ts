import { Command } from 'commander';
import { clubOption, withClub } from '../clubFile.ts';
import { showProgress } from '../showProgress.ts';

interface RebuildOptions {
  club: string;
  onlyForget?: true;
}

/** `rebuild`: everything that was worked out of a club, worked out anew. */
export function rebuildCommand(): Command {
  return new Command('rebuild')
    .summary("work everybody's strength out anew")
    .description(
      "Throws away everything that was worked out for a club and kept beside its file, and works everybody's strength out again from the log. The club itself is not touched.",
    )
    .option('--only-forget', 'only throw it away; it is worked out again when it is next needed')
    .addOption(clubOption())
    .action(rebuild);
}

async function rebuild({ club, onlyForget }: RebuildOptions): Promise<void> {
  await withClub(club, async (store) => {
    const { forgetKept, keptAnswers } = await import('#server/jobs/keptAnswers.ts');
    forgetKept(store.path);
    if (onlyForget) {
      process.stdout.write('What was worked out is thrown away; the club is as it was.\n');
      return;
    }
    const { work } = await import('#server/jobs/jobs.ts');
    const { reckoningMark } = await import('#server/jobs/reckoningMark.ts');
    const { workThreads } = await import('#server/jobs/threads.ts');
    const { strengthEstimator } = await import('#server/strength/strengthEstimator.ts');
    const threads = workThreads(work);
    const keepIn = keptAnswers(store.path, await reckoningMark());
    const estimator = strengthEstimator(store, threads.run, { goesOn: true, keepIn });
    const hideProgress = showProgress(estimator);
    try {
      await estimator.ofClub(await store.today());
    } finally {
      hideProgress();
      await threads.close();
      await keepIn.written();
    }
    const { length } = await estimator.summaries();
    const lifts = `${length} ${length === 1 ? 'lift' : 'lifts'}`;
    process.stdout.write(`Worked out anew and kept: the strength of all lifters, ${lifts} in all.\n`);
  });
}
