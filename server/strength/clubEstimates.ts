import type { ClubRecords } from '#contract/records/allKinds.ts';
import { lift as liftShape } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { EstimateProgress, StrengthSummary } from '#contract/strength/strengthSummary.ts';
import { clubPriors } from '#reckon/strength/clubPriors.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { KeptEstimates } from './keptEstimates.ts';
import { liftKey } from './liftKey.ts';

/** Everybody's estimates of one day, worked out behind whatever else is asked for. */
interface ClubEstimates {
  /**
   * Works out what is out of date. Where that is most of the club it then learns from all of it what to expect of each
   * lifter, and weighs every estimate anew with that. A run under way is joined.
   */
  run(on: string): Promise<void>;
  /** Whether a run would find anything to do. */
  isUpToDate(on: string): Promise<boolean>;
  progress(): EstimateProgress;
  /** What is known by now, in short; what is out of date is marked. */
  summaries(): Promise<StrengthSummary[]>;
}

type Short = Omit<StrengthSummary, 'upToDate'>;
type Told = Pick<StrengthEstimate, 'lifterId' | 'lift' | 'bodyMassKg' | 'parameters'>;
interface Noted {
  mark: string;
  /** Null where nothing came out. */
  found: { short: Short; told: Told } | null;
}

/** `onLearned` hears when everybody was weighed anew by what the club had shown. */
export function clubEstimates(
  { basis, markOf, estimateOf, expect, believeAnew, onGiven }: KeptEstimates,
  onLearned: () => void,
): ClubEstimates {
  const noted = new Map<string, Noted>();
  let clubOn = '';
  let progress = { done: 0, total: 0 };
  let running: Promise<void> | undefined;

  onGiven((ask, mark, estimate) => {
    if (ask.on === clubOn) noted.set(liftKey(ask), { mark, found: estimate && inShort(estimate) });
  });

  async function outOfDate(on: string): Promise<LiftOnDay[]> {
    const { records, marksOf } = await basis();
    const asks: LiftOnDay[] = [];
    for (const { id: lifterId } of records.lifter) {
      for (const lift of (await marksOf(lifterId)).keys()) {
        const ask = { lifterId, lift, on };
        if (noted.get(liftKey(ask))?.mark !== (await markOf(ask))) asks.push(ask);
      }
    }
    return asks;
  }

  async function workOff(
    asks: readonly LiftOnDay[],
    work: (ask: LiftOnDay) => Promise<unknown>,
  ): Promise<void> {
    await Promise.all(
      asks.map(async (ask) => {
        try {
          await work(ask);
        } catch (error) {
          // One lifter's fault must not keep the others waiting, nor be tried for ever.
          noted.set(liftKey(ask), { mark: (await markOf(ask)) ?? '', found: null });
          console.error(error);
        }
        progress.done += 1;
      }),
    );
  }

  const weigh = (ask: LiftOnDay) => estimateOf(ask, { behind: true });

  async function overClub(): Promise<void> {
    const first = await outOfDate(clubOn);
    const learns = first.length > noted.size / 2;
    progress = { done: 0, total: first.length * (learns ? 2 : 1) };
    if (!learns) return workOff(first, weigh);
    for (const asks of inWaves(first)) {
      await workOff(asks, weigh);
      await learn();
    }
    const second = await outOfDate(clubOn);
    progress.total = progress.done + second.length;
    await workOff(second, believeAnew);
    onLearned();
  }

  /** What to expect of everybody, from all that is known by now. */
  async function learn(): Promise<void> {
    const { records } = await basis();
    const told = notedOf(records).flatMap(({ found }) => found?.told ?? []);
    expect(new Map(liftShape.options.map((lift) => [lift, clubPriors(records, told, lift)])));
  }

  /** In the club's own order, whatever came first: what is learned from it is the same each time. */
  function notedOf({ lifter }: Pick<ClubRecords, 'lifter'>): Noted[] {
    return lifter.flatMap(({ id: lifterId }) =>
      liftShape.options.flatMap((lift) => noted.get(liftKey({ lifterId, lift })) ?? []),
    );
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
    isUpToDate: async (on) => (await outOfDate(on)).length === 0,
    progress: () => ({ ...progress, running: running !== undefined }),
    async summaries() {
      const { records } = await basis();
      const summaries: StrengthSummary[] = [];
      for (const { mark, found } of notedOf(records))
        if (found)
          summaries.push({
            ...found.short,
            upToDate: mark === (await markOf({ ...found.told, on: clubOn })),
          });
      return summaries;
    },
  };
}

/** Of the club's lifters every twelfth, then every fourth, then all: what some have shown spares most of the others a second reading. */
const WAVES = [12, 4, 1];

function inWaves(asks: readonly LiftOnDay[]): LiftOnDay[][] {
  const lifters = [...new Set(asks.map(({ lifterId }) => lifterId))];
  const waveOf = ({ lifterId }: LiftOnDay) =>
    WAVES.findIndex((every) => lifters.indexOf(lifterId) % every === 0);
  return WAVES.map((_, wave) => asks.filter((ask) => waveOf(ask) === wave));
}

function inShort(estimate: StrengthEstimate): Noted['found'] {
  const { lifterId, lift, on, setCount, lastSetOn, maxKg, bodyMassKg, parameters } = estimate;
  return {
    short: { lifterId, lift, on, setCount, lastSetOn, maxKg },
    told: { lifterId, lift, bodyMassKg, parameters },
  };
}
