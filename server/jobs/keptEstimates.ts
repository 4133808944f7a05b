import type { Lift } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { type EstimateBasis, newestBasis } from './estimateBasis.ts';
import { type EstimateLift, estimateThreadCount } from './estimateThreads.ts';
import { newestFirst } from './newestFirst.ts';
import { ownRecords } from './ownRecords.ts';

/** One lift of one lifter, as known on a day. */
export interface Ask {
  lifterId: string;
  lift: Lift;
  on: string;
}

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
  markOf(ask: Ask): Promise<string | undefined>;
  /** Null where nothing is known. `behind`: after all that somebody waits for. */
  estimateOf(ask: Ask, behind?: 'behind'): Promise<StrengthEstimate | null>;
  /** From now on lifters are believed to be so before their logs; without it, as in the population. */
  expect(priors: Priors): void;
  /** Tells each estimate that is given out. */
  onGiven(listener: (ask: Ask, kept: Kept) => void): void;
}

/** Whole estimates that are kept; the one not asked for the longest goes first. */
const keptCount = 240;

/** Works estimates out once for each state of what they rest on. */
export function keptEstimates(store: ClubStore, estimateLift: EstimateLift): KeptEstimates {
  const basis = newestBasis(store);
  const queue = newestFirst<StrengthEstimate | null>(estimateThreadCount);
  const kept = new Map<string, Kept>();
  const atWork = new Map<string, { mark: string; result: Promise<StrengthEstimate | null> }>();
  const listeners: Parameters<KeptEstimates['onGiven']>[0][] = [];
  let priors: Priors = new Map();
  let timesExpected = 0;

  async function markOf({ lifterId, lift, on }: Ask): Promise<string | undefined> {
    const marks = await (await basis()).marksOf(lifterId);
    const mark = marks.get(lift);
    return mark && `${on} ${timesExpected} ${mark}`;
  }

  async function estimateOf(ask: Ask, behind?: 'behind'): Promise<StrengthEstimate | null> {
    const mark = await markOf(ask);
    if (mark === undefined) return null;
    const key = keyOf(ask);
    const known = kept.get(key);
    if (known?.mark === mark) return keep(ask, known);
    const begun = atWork.get(key);
    return begun?.mark === mark ? begun.result : queue.ask(key, () => begin(ask), behind !== undefined);
  }

  /** A work that waited is done with the club as it is when its turn comes. */
  async function begin(ask: Ask): Promise<StrengthEstimate | null> {
    const mark = await markOf(ask);
    if (mark === undefined) return null;
    const key = keyOf(ask);
    const begun = atWork.get(key);
    if (begun?.mark === mark) return begun.result;
    const work = { mark, result: workOut(ask) };
    atWork.set(key, work);
    try {
      return keep(ask, { mark, estimate: await work.result });
    } finally {
      if (atWork.get(key) === work) atWork.delete(key);
    }
  }

  async function workOut(of: Ask): Promise<StrengthEstimate | null> {
    const { lifterId, lift, on } = of;
    const [{ records }, log] = await Promise.all([basis(), store.loggedSets({ lifterId, lift, to: on })]);
    const former = await store.formerGear(log);
    const prior = priors.get(lift)?.(lifterId) ?? populationPrior(lift);
    return estimateLift({ records: ownRecords(records, lifterId, former), log, of, prior });
  }

  function keep(ask: Ask, one: Kept): StrengthEstimate | null {
    const key = keyOf(ask);
    kept.delete(key);
    kept.set(key, one);
    const [oldest] = kept.keys();
    if (kept.size > keptCount) kept.delete(oldest!);
    for (const listener of listeners) listener(ask, one);
    return one.estimate;
  }

  return {
    basis,
    markOf,
    estimateOf,
    expect(learned) {
      priors = learned;
      timesExpected += 1;
    },
    onGiven: (listener) => void listeners.push(listener),
  };
}

function keyOf({ lifterId, lift, on }: Ask): string {
  return `${lifterId} ${lift} ${on}`;
}
