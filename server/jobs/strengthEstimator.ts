import { clubPriors } from '#contract/estimate/clubPriors.ts';
import type { Day } from '#contract/records/day.ts';
import { type Lift, lift as liftShape } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import type { EstimateProgress, StrengthSummary } from '#contract/strengthSummary.ts';
import { type Prior, populationPrior } from '#core/strength/parameters.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newestBasis } from './estimateBasis.ts';
import { type EstimateLift, estimateThreadCount } from './estimateThreads.ts';
import { newestFirst } from './newestFirst.ts';
import { ownRecords } from './ownRecords.ts';

/** What the log says of the club's lifters: worked out when asked for, and kept as long as nothing it rests on changes. */
export interface StrengthEstimator {
  /** Every lift of a lifter of which something is known on a day. */
  ofLifter(lifterId: string, on: string): Promise<StrengthEstimate[]>;
  /** The lifts of a training day. */
  ofDay(day: Pick<Day, 'date' | 'groups'>): Promise<StrengthEstimate[]>;
  /**
   * Works out the whole club behind everything else that is asked for, and learns from it what to expect of each of its
   * lifters; with `again` also where that was learned before. Resolves when all is done; a run under way is joined.
   */
  estimateClub(on: string, again?: 'again'): Promise<void>;
  /** Begins that where something is out of date, and does not wait for its end. */
  bringUpToDate(on: string, again?: 'again'): Promise<void>;
  /** What is known of everybody by now, in short, from the last run over the club. */
  summaries(): Promise<StrengthSummary[]>;
  progress(): EstimateProgress;
  /** Begins nothing more; what is under way may fail in silence. */
  stop(): void;
}

interface Ask {
  lifterId: string;
  lift: Lift;
  on: string;
}
interface Kept {
  mark: string;
  estimate: StrengthEstimate | null;
}
type Learned = Omit<StrengthSummary, 'upToDate'> & Pick<StrengthEstimate, 'bodyMassKg' | 'parameters'>;

/** Whole estimates that are kept; the one not asked for the longest goes first. */
const keptCount = 240;

export function strengthEstimator(store: ClubStore, estimateLift: EstimateLift): StrengthEstimator {
  const basisNow = newestBasis(store);
  const queue = newestFirst<StrengthEstimate | null>(estimateThreadCount);
  const kept = new Map<string, Kept>();
  const atWork = new Map<string, { mark: string; result: Promise<StrengthEstimate | null> }>();
  /** By lifter and lift, of the day of the last run over the club. */
  const inShort = new Map<string, { mark: string; learned: Learned | null }>();
  let clubOn = '';
  let stopped = false;
  let run: { done: number; total: number; ended: Promise<void> } | undefined;
  let lastRun = { done: 0, total: 0 };
  /** What the club's lifters tell to expect of each of them, and how often that was learned. */
  let priors: { count: number; of: Map<Lift, (lifterId: string) => Prior> } = { count: 0, of: new Map() };

  async function markOf({ lifterId, lift, on }: Ask): Promise<string | undefined> {
    const mark = (await (await basisNow()).marksOf(lifterId)).get(lift);
    return mark && `${on} ${priors.count} ${mark}`;
  }

  async function estimateOf(ask: Ask, behind = false): Promise<StrengthEstimate | null> {
    const mark = await markOf(ask);
    if (mark === undefined) return null;
    const key = keyOf(ask);
    const known = kept.get(key);
    if (known?.mark === mark) return keep(ask, known).estimate;
    const begun = atWork.get(key);
    return begun?.mark === mark ? begun.result : queue.ask(key, () => begin(ask), behind);
  }

  /** A work that waited is done with the club as it is when its turn comes. */
  async function begin(ask: Ask): Promise<StrengthEstimate | null> {
    if (stopped) return null;
    const mark = await markOf(ask);
    if (mark === undefined) return null;
    const key = keyOf(ask);
    const begun = atWork.get(key);
    if (begun?.mark === mark) return begun.result;
    const work = { mark, result: workOut(ask) };
    atWork.set(key, work);
    try {
      return keep(ask, { mark, estimate: await work.result }).estimate;
    } finally {
      if (atWork.get(key) === work) atWork.delete(key);
    }
  }

  async function workOut(of: Ask): Promise<StrengthEstimate | null> {
    const { lifterId, lift, on } = of;
    const [{ records }, log] = await Promise.all([basisNow(), store.loggedSets({ lifterId, lift, to: on })]);
    const former = await store.formerGear(log);
    const prior = priors.of.get(lift)?.(lifterId) ?? populationPrior(lift);
    return estimateLift({ records: ownRecords(records, lifterId, former), log, of, prior });
  }

  function keep(ask: Ask, one: Kept): Kept {
    const key = keyOf(ask);
    kept.delete(key);
    kept.set(key, one);
    for (const oldest of kept.keys()) {
      if (kept.size <= keptCount) break;
      kept.delete(oldest);
    }
    if (ask.on === clubOn) inShort.set(shortKey(ask), { mark: one.mark, learned: learnedFrom(one.estimate) });
    return one;
  }

  async function outOfDate(on: string): Promise<Ask[]> {
    const { records, marksOf } = await basisNow();
    const asks: Ask[] = [];
    for (const { id: lifterId } of records.lifter) {
      for (const lift of (await marksOf(lifterId)).keys()) {
        const ask = { lifterId, lift, on };
        if (inShort.get(shortKey(ask))?.mark !== (await markOf(ask))) asks.push(ask);
      }
    }
    return asks;
  }

  async function workOff(asks: readonly Ask[], current: { done: number }): Promise<void> {
    await Promise.all(
      asks.map(async (ask) => {
        try {
          await estimateOf(ask, true);
        } catch (error) {
          if (stopped) return;
          // One lifter's fault must not keep the others waiting, nor be tried for ever.
          console.error(error);
          inShort.set(shortKey(ask), { mark: (await markOf(ask)) ?? '', learned: null });
        }
        current.done += 1;
      }),
    );
  }

  async function overClub(on: string, learn: boolean, current: { done: number; total: number }) {
    clubOn = on;
    const asks = await outOfDate(on);
    current.total = asks.length;
    if (!learn) return workOff(asks, current);
    const { records } = await basisNow();
    current.total += asks.length;
    await workOff(asks, current);
    const told = [...inShort.values()].flatMap(({ learned }) => learned ?? []);
    priors = {
      count: priors.count + 1,
      of: new Map(liftShape.options.map((lift) => [lift, clubPriors(records, told, lift)])),
    };
    const anew = await outOfDate(on);
    current.total = current.done + anew.length;
    await workOff(anew, current);
  }

  async function estimateClub(on: string, again?: 'again'): Promise<void> {
    if (run && on === clubOn && !again) return run.ended;
    while (run) await run.ended;
    const current = { done: 0, total: 0 };
    const ended = overClub(on, priors.count === 0 || again !== undefined, current).finally(() => {
      lastRun = { ...current };
      run = undefined;
    });
    run = Object.assign(current, { ended });
    return ended;
  }

  return {
    estimateClub,
    async ofLifter(lifterId, on) {
      const lifts = [...(await (await basisNow()).marksOf(lifterId)).keys()];
      return present(await Promise.all(lifts.map((lift) => estimateOf({ lifterId, lift, on }))));
    },
    async ofDay({ date: on, groups }) {
      const asks = groups.flatMap(({ lift, places }) =>
        places.map(({ lifterId }): Ask => ({ lifterId, lift, on })),
      );
      const once = new Map(asks.map((ask) => [keyOf(ask), ask]));
      return present(await Promise.all([...once.values()].map((ask) => estimateOf(ask))));
    },
    async bringUpToDate(on, again) {
      if ((run && !again) || (!again && (await outOfDate(on)).length === 0)) return;
      estimateClub(on, again).catch((error) => {
        if (!stopped) console.error(error);
      });
    },
    async summaries() {
      const { records } = await basisNow();
      const found: StrengthSummary[] = [];
      for (const { id: lifterId } of records.lifter) {
        for (const lift of liftShape.options) {
          const known = inShort.get(shortKey({ lifterId, lift }));
          if (!known?.learned) continue;
          const { parameters: _, bodyMassKg: __, ...short } = known.learned;
          found.push({ ...short, upToDate: known.mark === (await markOf({ lifterId, lift, on: clubOn })) });
        }
      }
      return found;
    },
    progress() {
      const { done, total } = run ?? lastRun;
      return { done, total, running: run !== undefined };
    },
    stop() {
      stopped = true;
    },
  };
}

function keyOf({ lifterId, lift, on }: Ask): string {
  return `${lifterId} ${lift} ${on}`;
}

function shortKey({ lifterId, lift }: Omit<Ask, 'on'>): string {
  return `${lifterId} ${lift}`;
}

function present(estimates: readonly (StrengthEstimate | null)[]): StrengthEstimate[] {
  return estimates.filter((estimate) => estimate !== null);
}

function learnedFrom(estimate: StrengthEstimate | null): Learned | null {
  if (estimate === null) return null;
  const { lifterId, lift, on, setCount, lastSetOn, maxKg, bodyMassKg, parameters } = estimate;
  return { lifterId, lift, on, setCount, lastSetOn, maxKg, bodyMassKg, parameters };
}
