import { setImmediate as othersFirst } from 'node:timers/promises';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { lift as liftShape } from '#contract/records/lift.ts';
import type { EstimateProgress, StrengthSummary } from '#contract/strength/strengthSummary.ts';
import { fingerprint } from '#reckon/basis/fingerprint.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { othersBetween } from '#server/jobs/othersBetween.ts';
import type { EstimateMark, KeptEstimates } from './keptEstimates.ts';
import { liftKey } from './liftKey.ts';
import { type Noted, notedEstimates } from './notedEstimates.ts';

/** Everybody's estimates of one day, worked out behind whatever else is asked for. */
interface ClubEstimates {
  /**
   * Works out what is out of date. Where that is most of the club, or on another day when anything was logged since, it then learns
   * from all of it what to expect of each lifter, and weighs every estimate anew with that. A run under way is joined.
   */
  run(on: string): Promise<void>;
  /** Whether a run would find anything to do. */
  isUpToDate(on: string): Promise<boolean>;
  progress(): EstimateProgress;
  /** What is known by now, in short; what is out of date is marked. */
  summaries(): Promise<StrengthSummary[]>;
}

interface Hearers {
  /** Everybody was weighed anew by what the club had shown. */
  onLearned: () => void;
  /** One lifter's lift went wrong. */
  onFault: (error: unknown) => void;
}

/** What is known in short is kept `keepIn`. Between two lifters others are answered: of four hundred, all in one go would keep them waiting for seconds. */
export function clubEstimates(
  { basis, markOf, estimateOf, expect, showed, believeAnew, onGiven }: KeptEstimates,
  keepIn: KeptAnswers,
  { onLearned, onFault }: Hearers,
): ClubEstimates {
  const noted = notedEstimates(keepIn);
  let clubOn = '';
  let progress = { done: 0, total: 0 };
  let running: Promise<void> | undefined;

  onGiven((ask, mark, estimate) => {
    if (ask.on === clubOn) noted.note(ask, mark, estimate);
  });

  /** Every lift that something is known of, with the mark of now and what was noted of it. */
  async function allLifts(on: string): Promise<LiftNow[]> {
    const club = await basis();
    const lifts: LiftNow[] = [];
    for (const { id: lifterId } of club.records.lifter) {
      await othersFirst();
      for (const lift of (await club.marksOf(lifterId)).keys()) {
        const ask = { lifterId, lift, on };
        const mark = await markOf(ask, club);
        if (mark) lifts.push({ ask, mark, known: noted.of(ask) });
      }
    }
    return lifts;
  }

  async function workOff(
    asks: readonly LiftOnDay[],
    work: (ask: LiftOnDay) => Promise<unknown>,
  ): Promise<void> {
    await othersBetween(asks, async (ask) => {
      try {
        await work(ask);
      } catch (error) {
        // One lifter's fault must not keep the others waiting, nor be tried for ever.
        const mark = await markOf(ask);
        if (mark) noted.note(ask, mark, null);
        onFault(error);
      }
      progress.done += 1;
    });
  }

  const weigh = (ask: LiftOnDay) => estimateOf(ask, { behind: true });

  async function overClub(): Promise<void> {
    const all = await allLifts(clubOn);
    const due = all.filter(isDue);
    const learns = due.filter((lift) => !isOfSameLog(lift)).length > all.length / 2;
    progress = { done: 0, total: due.length * (learns ? 2 : 1) };
    if (learns) {
      for (const asks of inWaves(due.map(({ ask }) => ask))) {
        await workOff(asks, weigh);
        await learn();
      }
    } else {
      const isCarried = new Set(due.filter(isOnlyOfOtherDay).map(({ ask }) => ask));
      const asks = due.map(({ ask }) => ask);
      await workOff(asks, (ask) => (isCarried.has(ask) ? believeAnew(ask) : weigh(ask)));
      if (!(await isLearnedAnew())) return;
      await learn();
    }
    const again = (await allLifts(clubOn)).filter(isDue).map(({ ask }) => ask);
    progress.total = progress.done + again.length;
    await workOff(again, believeAnew);
    onLearned();
  }

  /** What to expect of everybody is learned once on each day before which anything was logged or written down. */
  async function isLearnedAnew(): Promise<boolean> {
    const before = await showed();
    return before === undefined || (before.on !== clubOn && before.from !== stateOf(await allLifts(clubOn)));
  }

  /** What to expect of everybody, from all that is known by now. */
  async function learn(): Promise<void> {
    const { records } = await basis();
    const told = notedOf(records).flatMap(({ found }) => found?.told ?? []);
    const from = stateOf(await allLifts(clubOn));
    const lifters = records.lifter.map(({ id, statureM }) => ({ id, statureM }));
    await expect({ on: clubOn, from, lifters, told });
  }

  /** In the club's own order, whatever came first: what is learned from it is the same each time. */
  function notedOf({ lifter }: Pick<ClubRecords, 'lifter'>): Noted[] {
    return lifter.flatMap(({ id }) => notedOfLifter(id));
  }

  function notedOfLifter(lifterId: string): Noted[] {
    return liftShape.options.flatMap((lift) => noted.of({ lifterId, lift }) ?? []);
  }

  async function run(on: string): Promise<void> {
    if (running) {
      const joined = on === clubOn;
      await running;
      return joined ? undefined : run(on);
    }
    clubOn = on;
    running = overClub().finally(() => {
      running = undefined;
    });
    return running;
  }

  return {
    run,
    async isUpToDate(on) {
      if (running === undefined) clubOn = on;
      return !(await allLifts(on)).some(isDue);
    },
    progress: () => ({ ...progress, running: running !== undefined }),
    async summaries() {
      const club = await basis();
      const summaries: StrengthSummary[] = [];
      for (const { id } of club.records.lifter) {
        await othersFirst();
        for (const { mark, found } of notedOfLifter(id)) {
          const now = found && (await markOf({ ...found.told, on: clubOn }, club));
          if (now) summaries.push({ ...found.short, upToDate: areSame(mark, now) });
        }
      }
      return summaries;
    },
  };
}

/** Of the club's lifters every twelfth, then every fourth, then all: what some have shown spares most of the others a second reading. */
const WAVES = [12, 4, 1];

function inWaves(asks: readonly LiftOnDay[]): LiftOnDay[][] {
  const lifters = [...new Set(asks.map(({ lifterId }) => lifterId))];
  const placeOf = new Map(lifters.map((lifterId, at) => [lifterId, at]));
  const waveOf = ({ lifterId }: LiftOnDay) =>
    WAVES.findIndex((every) => placeOf.get(lifterId)! % every === 0);
  return WAVES.map((_, wave) => asks.filter((ask) => waveOf(ask) === wave));
}

interface LiftNow {
  ask: LiftOnDay;
  mark: EstimateMark;
  known: Noted | undefined;
}

/** A whole log is still to be weighed where sets were taken in alone before the server ended. */
function isDue({ mark, known }: LiftNow): boolean {
  return known === undefined || !areSame(known.mark, mark) || known.isRecalledInPart;
}

function isOfSameLog({ mark, known }: LiftNow): boolean {
  return known?.mark.content === mark.content;
}

/** Then the estimate before is carried to this day. */
function isOnlyOfOtherDay(lift: LiftNow): boolean {
  return isOfSameLog(lift) && !lift.known!.isRecalledInPart;
}

function areSame(one: EstimateMark, other: EstimateMark): boolean {
  return one.on === other.on && one.prior === other.prior && one.content === other.content;
}

function stateOf(lifts: readonly LiftNow[]): string {
  return fingerprint(lifts.map(({ ask, mark }) => [liftKey(ask), mark.content]));
}
