import type { Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type EstimateBasis, newestBasis } from './estimateBasis.ts';
import { estimateThreadCount } from './estimateThreads.ts';
import type { LiftThreads } from './liftThreads.ts';
import { liftWorks } from './liftWorks.ts';
import { newestFirst } from './newestFirst.ts';
import { newestKept } from './newestKept.ts';

/** An estimate, and the mark of all that it rests on. */
interface Kept {
  mark: string;
  estimate: StrengthEstimate | null;
}

/** What to believe of each lifter before their own log. */
type Priors = ReadonlyMap<Lift, (lifterId: string) => Prior>;

export interface KeptEstimates {
  /** The club as it stands now. */
  basis(): Promise<EstimateBasis>;
  /** The mark that an estimate made now would bear; undefined where nothing is known of the lift. */
  markOf(of: LiftOnDay): Promise<string | undefined>;
  /**
   * Null where nothing is known. Sets logged since the estimate before are taken into it alone, and the whole log is weighed
   * again afterwards. `behind`: after all that somebody waits for, and by the whole log.
   */
  estimateOf(of: LiftOnDay, behind?: 'behind'): Promise<StrengthEstimate | null>;
  /** From now on lifters are believed to be so before their logs; without it, as in the population. */
  expect(priors: Priors): void;
  /** The estimate under what is now believed before the log, behind all that somebody waits for. */
  believeAnew(of: LiftOnDay): Promise<StrengthEstimate | null>;
  /** Tells each estimate that is given out. */
  onGiven(listener: (of: LiftOnDay, kept: Kept) => void): void;
}

interface Hearers {
  /** The whole log was weighed in the place of an estimate that had taken sets in alone. */
  onWeighed: () => void;
  /** What nobody waits for went wrong. */
  onFault: (error: unknown) => void;
}

/** Whole estimates that are kept; the one not asked for the longest goes first. */
const keptCount = 240;

/** Works estimates out once for each state of what they rest on. */
export function keptEstimates(
  store: ClubStore,
  threads: LiftThreads,
  { onWeighed, onFault }: Hearers,
): KeptEstimates {
  const basis = newestBasis(store);
  const works = liftWorks(store, basis, threads);
  const wholes = newestFirst<StrengthEstimate | null>(estimateThreadCount);
  const quicks = newestFirst<StrengthEstimate | null>(1);
  const kept = newestKept<Kept>(keptCount);
  const atWork = new Map<string, { mark: string; result: Promise<StrengthEstimate | null> }>();
  const listeners: Parameters<KeptEstimates['onGiven']>[0][] = [];
  let priors: Priors = new Map();
  let timesExpected = 0;

  async function marksOf({ lifterId, lift, on }: LiftOnDay) {
    const found = (await (await basis()).marksOf(lifterId)).get(lift);
    if (found === undefined) return undefined;
    const { mark, butForNewSets, setsInLog } = found;
    return {
      mark: `${on} ${timesExpected} ${mark}`,
      butForNewSets,
      setsInLog,
      prior: priors.get(lift)?.(lifterId) ?? populationPrior(lift),
    };
  }

  async function estimateOf(of: LiftOnDay, behind?: 'behind'): Promise<StrengthEstimate | null> {
    const marks = await marksOf(of);
    if (marks === undefined) return null;
    const known = kept.get(keyOf(of));
    if (known?.mark === marks.mark) return keep(of, known);
    if (behind || !works.remembers(of)) return weigh(of, behind !== undefined);
    return (await quicks.ask(keyOf(of), () => goOn(of), false)) ?? weigh(of, false);
  }

  /**
   * From the estimate before: with the sets logged since, or under what is now believed before the log. Null where it takes the
   * whole log. A work that waited is done with the club as it is when its turn comes.
   */
  async function goOn(of: LiftOnDay): Promise<StrengthEstimate | null> {
    const marks = await marksOf(of);
    if (marks === undefined) return null;
    const { mark } = marks;
    const known = kept.get(keyOf(of));
    if (known?.mark === mark) return keep(of, known);
    const taken = await works.takeIn(of, marks);
    if (taken === null) {
      const estimate = await works.believeAnew(of, marks);
      return estimate && keepUnlessNewer(of, { mark, estimate });
    }
    const estimate = await keepUnlessNewer(of, { mark, estimate: taken.estimate });
    weigh(of, !taken.wholeIsDue).catch(onFault);
    return estimate;
  }

  async function weigh(of: LiftOnDay, behind: boolean): Promise<StrengthEstimate | null> {
    const mark = (await marksOf(of))?.mark;
    const begun = atWork.get(keyOf(of));
    return begun !== undefined && begun.mark === mark
      ? begun.result
      : wholes.ask(keyOf(of), () => beginWhole(of), behind);
  }

  async function beginWhole(of: LiftOnDay): Promise<StrengthEstimate | null> {
    const marks = await marksOf(of);
    if (marks === undefined) return null;
    const { mark } = marks;
    const key = keyOf(of);
    const known = kept.get(key);
    if (known?.mark === mark && !known.estimate?.takenIn) return keep(of, known);
    const begun = atWork.get(key);
    if (begun?.mark === mark) return begun.result;
    const work = { mark, result: works.weigh(of, marks) };
    atWork.set(key, work);
    try {
      return await keepUnlessNewer(of, { mark, estimate: await work.result });
    } finally {
      if (atWork.get(key) === work) atWork.delete(key);
    }
  }

  /** What was taken in while this was worked out is not forgotten again. */
  async function keepUnlessNewer(of: LiftOnDay, one: Kept): Promise<StrengthEstimate | null> {
    const newest = (await marksOf(of))?.mark;
    return newest !== one.mark && kept.get(keyOf(of))?.mark === newest ? one.estimate : keep(of, one);
  }

  function keep(of: LiftOnDay, one: Kept): StrengthEstimate | null {
    const key = keyOf(of);
    const before = kept.get(key)?.estimate;
    kept.set(key, one);
    for (const listener of listeners) listener(of, one);
    if (before?.takenIn && !one.estimate?.takenIn) onWeighed();
    return one.estimate;
  }

  return {
    basis,
    markOf: async (of) => (await marksOf(of))?.mark,
    estimateOf,
    expect(learned) {
      priors = learned;
      timesExpected += 1;
    },
    believeAnew: async (of) => (await quicks.ask(keyOf(of), () => goOn(of), true)) ?? weigh(of, true),
    onGiven: (listener) => void listeners.push(listener),
  };
}

function keyOf({ lifterId, lift, on }: LiftOnDay): string {
  return `${lifterId} ${lift} ${on}`;
}
