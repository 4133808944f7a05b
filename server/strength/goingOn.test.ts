import { expect, onTestFinished, test } from 'vitest';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { work } from '#server/jobs/jobs.ts';
import { runHere } from '#server/jobs/runHere.ts';
import { workThreads } from '#server/jobs/threads.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { strengthEstimator } from './strengthEstimator.ts';

const TODAY = '2026-11-25';

async function threaded() {
  const { store } = await testApp(smallClub());
  const threads = workThreads(work);
  const estimator = strengthEstimator(store, threads.run, { goesOn: true });
  const here = strengthEstimator(store, runHere(store));
  onTestFinished(async () => {
    estimator.stop();
    await threads.close();
  });
  const squat = async () => only(await estimator.ofLifter('lifter-1', TODAY));
  return {
    store,
    estimator,
    here,
    squat,
    /** As it would be made from the whole log at once. */
    whole: async () => only(await here.ofLifter('lifter-1', TODAY)),
    /** Once the whole log has been weighed behind. */
    async settled() {
      for (;;) {
        const news = new Promise<void>((resolve) => {
          const stop = estimator.onNews(() => {
            stop();
            resolve();
          });
        });
        const now = await squat();
        if (now.takenIn === 0) return now;
        await news;
      }
    },
  };
}

function only(estimates: StrengthEstimate[]): StrengthEstimate {
  expect(estimates).toHaveLength(1);
  return estimates[0]!;
}

function believedBefore({ parameters }: StrengthEstimate) {
  return parameters.map(({ before }) => before);
}

const straight = (barKg: number) => ({ start: { way: 'free' }, barKg });
/** Slower the heavier, so that no set contradicts another. */
const mpsOf = (barKg: number) => 1.15 - 0.0065 * barKg;
const days = ['2026-11-02', '2026-11-06', '2026-11-09', '2026-11-13', '2026-11-16', '2026-11-20'];
const log = days.flatMap((doneOn, i) =>
  [90, 95, 100].map((barKg) =>
    squatSet({
      setup: straight(barKg + i),
      doneOn,
      reps: 3,
      made: 3,
      repsInReserve: 2,
      meanSpeedsMps: [mpsOf(barKg + i)],
    }),
  ),
);

test('twenty sets in a row are each taken in, and each in the end is weighed with the whole log', async () => {
  const { store, squat, settled, whole } = await threaded();
  await store.logSets(log);
  const before = await squat();
  expect(before.takenIn).toBe(0);
  const answers: StrengthEstimate[] = [];
  for (let i = 0; i < 20; i += 1) {
    const setup = straight(85 + i);
    await store.logSets([
      squatSet({ setup, doneOn: TODAY, reps: 2, made: 2, meanSpeedsMps: [mpsOf(85 + i)] }),
    ]);
    answers.push(await squat());
  }
  expect(answers.map(({ setCount }) => setCount - before.setCount)).toEqual(answers.map((_, i) => i + 1));
  expect(answers[0]!.takenIn).toBe(1);
  const full = await settled();
  expect(full).toEqual(await whole());
  const last = answers.at(-1)!;
  const width = full.maxKg.high80 - full.maxKg.low80;
  expect(Math.abs(last.maxKg.median - full.maxKg.median) / width).toBeLessThan(0.1);
});

test('a set that is struck, restored, corrected or from an earlier day takes the whole log at once', async () => {
  const { store, squat, settled, whole } = await threaded();
  const { sets } = await store.logSets(log);
  await squat();
  await store.logSets([squatSet({ setup: straight(96), doneOn: TODAY })]);
  expect((await squat()).takenIn).toBe(1);
  await settled();
  const id = sets.at(-1)!.id;
  const changes = [
    () => store.strikeSet(id),
    () => store.restoreSet(id),
    () => store.correctSets([{ id, set: squatSet({ setup: straight(97) }) }]),
    () => store.logSets([squatSet({ setup: straight(94), doneOn: '2026-11-03' })]),
    () => store.create('bodyMass', { lifterId: 'lifter-1', takenOn: '2026-11-24', massKg: 53 }),
  ];
  for (const change of changes) {
    await change();
    const now = await squat();
    expect(now.takenIn).toBe(0);
    expect(now).toEqual(await whole());
  }
});

test('what the club has shown is taken in by weighing every estimate anew, to what the whole logs would say', async () => {
  const { store, estimator, here } = await threaded();
  const { lifter, bodyMass, liftHeights } = smallClub();
  const lifterIds: string[] = [];
  for (const name of ['Ines Ford', 'Mara Birch', 'Tilda Ash']) {
    const { id: lifterId } = (await store.create('lifter', { ...lifter[0], id: undefined, name })).record;
    await store.create('bodyMass', { ...bodyMass[0], id: undefined, lifterId });
    await store.create('liftHeights', { ...liftHeights[0], id: undefined, lifterId });
    lifterIds.push(lifterId);
  }
  for (const [i, lifterId] of lifterIds.entries())
    await store.logSets(
      days.flatMap((doneOn, day) =>
        [80, 95].map((kg) => {
          const barKg = kg + day + 10 * i;
          const meanSpeedsMps = [mpsOf(barKg - 8 * i)];
          return squatSet({ lifterId, setup: straight(barKg), doneOn, reps: 2, made: 2, meanSpeedsMps });
        }),
      ),
    );
  await Promise.all([estimator.ofClub(TODAY), here.ofClub(TODAY)]);
  for (const lifterId of lifterIds) {
    const anew = only(await estimator.ofLifter(lifterId, TODAY));
    const whole = only(await here.ofLifter(lifterId, TODAY));
    expect(believedBefore(anew)).toEqual(believedBefore(whole));
    expect(anew.draws).not.toEqual(whole.draws);
    const width = whole.maxKg.high80 - whole.maxKg.low80;
    expect(Math.abs(anew.maxKg.median - whole.maxKg.median) / width).toBeLessThan(0.1);
    expect(anew.history.at(-1)!.median).toBeCloseTo(anew.maxKg.median, 0);
  }
});
