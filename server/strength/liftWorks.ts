import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Prior } from '#core/strength/parameters.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import { withTakenIn } from '#reckon/strength/withTakenIn.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import { newestKept } from '#server/jobs/newestKept.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import type { EstimateBasis } from './estimateBasis.ts';
import { liftKey } from './liftKey.ts';
import { ownRecords } from './ownRecords.ts';
import { rememberedCount } from './rememberedCount.ts';

/** What an estimate is to rest on: see BasisMark. */
export interface LiftBasis {
  butForNewSets: string;
  setsInLog: number;
  prior: Prior;
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
  /** The same sets under what is expected now. Null where it takes the whole log after all. */
  believeAnew(of: LiftOnDay, basis: LiftBasis): Promise<StrengthEstimate | null>;
}

/** An estimate to go on from, and what it rests on but for new sets. */
interface Going {
  version: number;
  basis: string;
  estimate: StrengthEstimate;
}

/** `goesOn`: whether `run` has a thread that remembers; without it every estimate is by the whole log. */
export function liftWorks(
  store: ClubStore,
  basis: () => Promise<EstimateBasis>,
  run: RunWork,
  goesOn: boolean,
): LiftWorks {
  /** The thread may remember fewer; then it says so. */
  const remembered = newestKept<Going>(rememberedCount);
  let versions = 0;

  /** Another may have been handed over meanwhile. */
  function goneOn(key: string, going: Going): void {
    if (remembered.get(key)?.version === going.version) remembered.set(key, going);
  }

  return {
    remembers: (of) => remembered.has(liftKey(of)),
    async weigh(of, { prior, butForNewSets }) {
      const { lifterId, lift, on } = of;
      const [{ records }, log] = await Promise.all([basis(), store.loggedSets({ lifterId, lift, to: on })]);
      const former = await store.formerGear(log);
      const asked = { records: ownRecords(records, lifterId, former), log, of, prior };
      if (!goesOn) return run('estimateLift', asked);
      const key = liftKey(of);
      const version = ++versions;
      const weighed = await run('weighLift', { ...asked, basis: butForNewSets });
      if (weighed === null) return null;
      const { estimate, state } = weighed;
      // Nobody waits for that; where it fails, new sets take the whole log.
      run('rememberLift', { key, version, state }).catch(() => {});
      remembered.set(key, { version, basis: butForNewSets, estimate });
      return estimate;
    },
    async takeIn(of, { butForNewSets, setsInLog }) {
      const key = liftKey(of);
      const before = remembered.get(key);
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
    async believeAnew(of, { butForNewSets, setsInLog, prior }) {
      const key = liftKey(of);
      const before = remembered.get(key);
      if (before?.basis !== butForNewSets) return null;
      const { version } = before;
      const asked = { of, prior, basis: butForNewSets, setsInLog };
      const told = await run('believeAnew', { key, version, asked });
      if (!told) return null;
      const estimate = { ...before.estimate, ...told };
      goneOn(key, { ...before, estimate });
      return estimate;
    },
  };
}
