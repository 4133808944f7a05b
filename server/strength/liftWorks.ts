import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import { withTakenIn } from '#reckon/strength/withTakenIn.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { newestKept } from '#server/jobs/newestKept.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { Expected } from './clubShowed.ts';
import type { EstimateBasis } from './estimateBasis.ts';
import { liftKey } from './liftKey.ts';
import { ownRecords } from './ownRecords.ts';
import { rememberedCount } from './rememberedCount.ts';

/** What an estimate is to rest on: see BasisMark. */
export interface LiftBasis {
  butForNewSets: string;
  setsInLog: number;
  /** What is believed before the log. */
  expected: Expected;
}

/** The ways to an estimate: by the whole log, or from the one before and what came since, sets or what the club showed. */
export interface LiftWorks {
  weigh(of: LiftOnDay, basis: LiftBasis): Promise<StrengthEstimate | null>;
  /** Whether there is an estimate to go on from. */
  remembers(of: LiftOnDay): boolean;
  /** Under what was expected of the lifter before. Null where it takes the whole log after all. */
  takeIn(
    of: LiftOnDay,
    basis: LiftBasis,
  ): Promise<{ estimate: StrengthEstimate; wholeIsDue: boolean } | null>;
  /** The same sets for this day and under what is expected now. Null where it takes the whole log after all. */
  believeAnew(of: LiftOnDay, basis: LiftBasis): Promise<StrengthEstimate | null>;
}

/** An estimate to go on from, and what it rests on but for new sets. */
interface Going {
  version: number;
  basis: string;
  /** The mark of what was believed before the log. */
  prior: string;
  estimate: StrengthEstimate;
}

/** One that is kept, with what it takes to go on from it. */
interface KeptGoing {
  estimate: StrengthEstimate;
  state: Uint8Array;
}

/**
 * `goesOn`: whether `run` has a thread that remembers; without it every estimate is by the whole log. What is gone on from is kept
 * `keepIn` as it was when the whole log was weighed last, or what is believed before it was another: sets since are few.
 */
export function liftWorks(
  store: ClubStore,
  basis: () => Promise<EstimateBasis>,
  run: RunWork,
  { goesOn, keepIn }: { goesOn: boolean; keepIn: KeptAnswers },
): LiftWorks {
  /** The thread may remember fewer; then it says so. */
  const remembered = newestKept<Going>(rememberedCount);
  const kept = keepIn.of('gone on from', rememberedCount);
  let versions = 0;

  function recall(key: string): Going | undefined {
    const known = remembered.get(key);
    const found = known || !goesOn ? undefined : kept.find(key);
    if (!found) return known;
    const [from, prior] = found.basis as [string, string];
    const { estimate, state } = found.answer as KeptGoing;
    return handOver(key, { basis: from, prior, estimate }, state);
  }

  function handOver(key: string, from: Omit<Going, 'version'>, state: Uint8Array): Going {
    const version = ++versions;
    const going = { ...from, version };
    // Nobody waits for that; where it fails, new sets take the whole log.
    run('rememberLift', { key, version, state }).catch(() => {});
    remembered.set(key, going);
    return going;
  }

  function keep(key: string, { basis: from, prior, estimate }: Omit<Going, 'version'>, state: Uint8Array) {
    const answer: KeptGoing = { estimate, state };
    kept.put(key, { basis: [from, prior], answer, mark: null });
  }

  /** Another may have been handed over meanwhile. */
  function goneOn(key: string, going: Going): void {
    if (remembered.get(key)?.version === going.version) remembered.set(key, going);
  }

  return {
    remembers: (of) => recall(liftKey(of)) !== undefined,
    async weigh(of, { expected: { prior, mark }, butForNewSets }) {
      const { records } = await basis();
      const asked = { door: readingDoorOf(store), records: ownRecords(records, of.lifterId), of, prior };
      if (!goesOn) return run('estimateLift', asked);
      const key = liftKey(of);
      const weighed = await run('weighLift', { ...asked, basis: butForNewSets });
      if (weighed === null) return null;
      const { estimate, state } = weighed;
      const from = { basis: butForNewSets, prior: mark, estimate };
      keep(key, from, state);
      handOver(key, from, state);
      return estimate;
    },
    async takeIn(of, { butForNewSets, setsInLog }) {
      const key = liftKey(of);
      const before = recall(key);
      if (before?.basis !== butForNewSets) return null;
      const { lifterId, lift, on } = of;
      const { version, estimate: earlier } = before;
      const sets = await store.loggedSets({ lifterId, lift, from: earlier.lastSetOn ?? undefined, to: on });
      const asked = { of, sets, setsInLog, basis: butForNewSets };
      const answer = await run('takeIn', { key, version, asked });
      if (!answer) return null;
      const estimate = withTakenIn(earlier, answer.taken);
      goneOn(key, { ...before, estimate });
      return { estimate, wholeIsDue: answer.wholeIsDue };
    },
    async believeAnew(of, { butForNewSets, setsInLog, expected: { prior, mark } }) {
      const key = liftKey(of);
      const before = recall(key);
      if (before?.basis !== butForNewSets) return null;
      const { version } = before;
      const asked = { of, prior, basis: butForNewSets, setsInLog };
      // Another day alone is soon gone on to again.
      const withState = before.prior !== mark;
      const answer = await run('believeAnew', { key, version, asked, withState });
      if (!answer) return null;
      const going = { ...before, prior: mark, estimate: { ...before.estimate, ...answer.told } };
      if (answer.state) keep(key, going, answer.state);
      goneOn(key, going);
      return going.estimate;
    },
  };
}
