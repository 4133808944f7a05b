import type { Lifter } from '#contract/records/lifters.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { showProgress } from './showProgress.ts';

/** The lifts of these lifters as known on a day, with the progress on the terminal. Everybody is worked out: what the others showed says what to expect of each. */
export async function estimatedLifts(
  store: ClubStore,
  lifters: readonly Pick<Lifter, 'id'>[],
  on: string,
): Promise<StrengthEstimate[]> {
  const { work } = await import('#server/jobs/jobs.ts');
  const { workThreads } = await import('#server/jobs/threads.ts');
  const { strengthEstimator } = await import('#server/strength/strengthEstimator.ts');
  const threads = workThreads(work);
  const estimator = strengthEstimator(store, threads.run);
  const hideProgress = showProgress(estimator);
  try {
    await estimator.ofClub(on);
    return (await Promise.all(lifters.map(({ id }) => estimator.ofLifter(id, on)))).flat();
  } finally {
    hideProgress();
    await threads.close();
  }
}
