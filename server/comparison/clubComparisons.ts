import { randomInt } from 'node:crypto';
import type { ComparisonOutlook } from '#contract/comparison/comparisonOutlook.ts';
import type { ComparisonWish, NewComparison } from '#contract/comparison/comparisonWish.ts';
import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Tell, Told } from '#contract/words/doing.ts';
import { comparisonOutlook } from '#reckon/comparison/comparisonOutlook.ts';
import { recordNamed } from '#server/guard/recordNamed.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { HowRun } from '#server/jobs/job.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { keptWork } from '#server/jobs/keptWork.ts';
import { othersBetween } from '#server/jobs/othersBetween.ts';
import type { WorkNews } from '#server/jobs/workNews.ts';
import type { StrengthEstimator } from '#server/strength/strengthEstimator.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';

/** Comparisons of two ways: what could be seen of one that is wished for, its draw, and what one that was drawn shows by now. */
export function clubComparisons(
  store: ClubStore,
  run: RunWork,
  estimator: StrengthEstimator,
  news: WorkNews,
) {
  async function restsOn() {
    const [{ seq, madeAt }, today] = await Promise.all([store.standing(), store.today()]);
    return { basis: [seq, madeAt, today], today };
  }

  async function estimatesOf(lifterIds: readonly string[], lift: Lift, today: string, tell: Tell = () => {}) {
    let weighed = 0;
    const each = await othersBetween(lifterIds, async (id) => {
      const estimates = await estimator.ofLifter(id, today, { lift });
      weighed += 1;
      tell(0, 0, { code: 'weighingLifters', at: weighed, of: lifterIds.length });
      return estimates;
    });
    return each.flat().map(briefly);
  }

  async function planned(
    wish: ComparisonWish,
    today: string,
    { seed, plays }: { seed: number; plays: number },
    { signal, tell }: HowRun & { tell: Tell },
  ) {
    const estimates = await estimatesOf(wish.lifterIds, wish.lift, today, tell);
    const asked = { door: readingDoorOf(store), wish, estimates, seed, plays };
    return run('planComparison', asked, { signal, tell });
  }

  const tellDraw: Tell = (done, total, doing) => hear({ done, total, doing: doing ?? null });

  /** Whoever plans hears it: one is played through at a time. */
  function hear(told: Told): void {
    news.tell({ work: 'comparison', of: '', ...told });
  }

  const outlooks = keptWork({
    most: mostKept,
    width: 1,
    keyOf: (wish: ComparisonWish) => JSON.stringify(wish),
    restsOn,
    endsWhenLeft: true,
    onTold: (_wish, told) => hear(told),
    work: async (wish, { today }, how): Promise<ComparisonOutlook> =>
      comparisonOutlook(await planned(wish, today, { seed: NO_SEED, plays: LOOKING_PLAYS }, how)),
  });

  const reports = keptWork({
    most: mostKept,
    width: 1,
    keyOf: ({ id }: Comparison) => id,
    restsOn,
    async work(comparison, { today }): Promise<ToldComparison> {
      const { lift, planDocument: plan } = comparison;
      const ids = plan.drawn.map(({ lifterId }) => lifterId);
      const estimates = plan.outcome === 'strength' ? await estimatesOf(ids, lift, today) : [];
      return run('tellComparison', { door: readingDoorOf(store), comparison, estimates, today });
    },
  });

  async function refuseImpossible({ lifterIds, startsOn }: ComparisonWish): Promise<void> {
    const [today, lifters] = await Promise.all([store.today(), store.list('lifter')]);
    const nobody = lifterIds.findIndex((id) => lifters.every((one) => one.id !== id));
    if (nobody >= 0)
      throw new Refusal(
        'invalid',
        `lifterIds[${nobody}]`,
        `lifterIds[${nobody}] is "${lifterIds[nobody]}"; the club has no lifter with that id.`,
      );
    if (startsOn < today)
      throw new Refusal(
        'invalid',
        'startsOn',
        `startsOn is "${startsOn}"; it must be today, ${today}, or later: a comparison is planned before anybody starts.`,
      );
  }

  return {
    async outlook(wish: ComparisonWish, signal: AbortSignal): Promise<ComparisonOutlook> {
      await refuseImpossible(wish);
      return outlooks.ask(wish, { signal });
    },
    async told(id: string, signal: AbortSignal): Promise<ToldComparison> {
      return reports.ask(await recordNamed(store, 'comparison', 'id', id), { signal });
    },
    /** Draws, and keeps what was drawn: who gets which is never seen before it is kept. */
    async draw({ title, firstMethodId, secondMethodId, note, seed, ...wish }: NewComparison) {
      await refuseImpossible(wish);
      const today = await store.today();
      const lots = { seed: seed ?? randomInt(SEEDS), plays: DRAWN_PLAYS };
      const { plan } = await planned(wish, today, lots, { tell: tellDraw });
      if (plan.drawn.length < 2)
        throw new Refusal(
          'conflict',
          'lifterIds',
          `Of those who are named ${plan.drawn.length === 0 ? 'nobody' : 'only one lifter'} can be drawn, and it takes two.`,
        );
      const { lift, family } = wish;
      return store.create('comparison', {
        title,
        lift,
        family,
        firstMethodId,
        secondMethodId,
        drawnOn: today,
        planDocument: plan,
        note,
      });
    },
  };
}

/** What is asked again while a page is open, and what was looked at before. */
const mostKept = 8;
/** Before the draw nothing of it is shown, so that any seed will do. */
const NO_SEED = 0;
const SEEDS = 2_147_483_648;
/** A coach who turns at the weeks gets an answer within a second, good to some tenths of a per cent; the plan that is kept is simulated as often as `plan-comparison` does. */
const LOOKING_PLAYS = 100;
const DRAWN_PLAYS = 400;

/** Without what each single set showed, which no comparison reads and which is most of an estimate on its way to a thread. */
function briefly(estimate: StrengthEstimate): StrengthEstimate {
  return { ...estimate, observations: [] };
}
