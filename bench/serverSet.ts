import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { millraceLog } from '#demo/history/millraceLog.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { openOneClub } from '#server/oneClub.ts';
import { serve } from '#server/serve.ts';

const TODAY = '2026-11-25';
const SETS = 12;
const WHOLES = 3;
/** The screen that asked is left alone until the whole log was weighed again. */
const STEPS_MS = 20;

/**
 * From a set that was just logged to the lift's estimate at the browser, over HTTP, against the same after a set was
 * struck: then the whole lift is weighed. The lifter with the longest log of a lift in the invented club, two years of it.
 */
export async function run(): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-'));
  const store = await openOneClub(join(folder, 'club.sqlite'), { name: 'the bench' });
  const club = millraceClub(TODAY);
  await store.importRecords(club, { sets: millraceLog(club, TODAY) });
  const { lifterId, lift, count } = longest(await store.loggedSets());
  const served = await serve({ store, port: 0 });
  const estimateNow = async () => {
    const answer = await fetch(`${served.url}/api/estimates?lifterId=${lifterId}&lift=${lift}&on=${TODAY}`);
    const { estimates } = (await answer.json()) as { estimates: StrengthEstimate[] };
    return estimates[0]!;
  };
  const untilWeighed = async () => {
    while ((await estimateNow()).takenIn > 0) await new Promise((resolve) => setTimeout(resolve, STEPS_MS));
  };
  try {
    await estimateNow();
    const [last] = (await store.loggedSets({ lifterId, lift })).slice(-1);
    const { setup, equipment, reps, made, meanSpeedsMps } = last!;
    const again = { lifterId, lift, setup, equipment, reps, made, meanSpeedsMps, doneOn: TODAY };
    const whole = [];
    const quick = [];
    const inARow = [];
    for (let i = 0; i < WHOLES; i += 1) {
      const { sets } = await store.logSets([again]);
      await untilWeighed();
      await store.strikeSet(sets[0]!.id);
      whole.push(await milliseconds(estimateNow));
    }
    for (let i = 0; i < SETS; i += 1) {
      await store.logSets([again]);
      quick.push(await milliseconds(estimateNow));
      await untilWeighed();
    }
    for (let i = 0; i < SETS; i += 1) {
      await store.logSets([again]);
      inARow.push(await milliseconds(estimateNow));
    }
    const [quickMs, wholeMs] = [middle(quick), middle(whole)];
    console.log(`${lift} of ${count} sets: whole ${wholeMs.toFixed(0)} ms, one set more ${said(quick)}`);
    console.log(`ratio ${(quickMs / wholeMs).toFixed(3)} (goal: one set more < 50 ms)`);
    console.log(`${SETS} sets in a row while the whole is weighed behind: ${said(inARow)}`);
  } finally {
    await served.close();
    await store.close();
    await rm(folder, { recursive: true });
  }
}

function longest(log: readonly { lifterId: string; lift: StrengthEstimate['lift'] }[]) {
  const counts = new Map<string, { lifterId: string; lift: StrengthEstimate['lift']; count: number }>();
  for (const { lifterId, lift } of log) {
    const key = `${lifterId} ${lift}`;
    counts.set(key, { lifterId, lift, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].reduce((most, one) => (one.count > most.count ? one : most));
}

async function milliseconds(work: () => Promise<unknown>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
}

function said(values: readonly number[]): string {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return `${middle(values).toFixed(0)} ms (${least.toFixed(0)} to ${most.toFixed(0)})`;
}
