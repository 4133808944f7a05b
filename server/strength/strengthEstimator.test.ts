import { once } from 'node:events';
import { expect, onTestFinished, test } from 'vitest';
import { runHere } from '#server/jobs/runHere.ts';
import { fakeRun } from '#server/jobs/tests/fakeRun.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { strengthEstimator } from './strengthEstimator.ts';

test('who left a training day without an estimate hears of it when it is there', async () => {
  const { store } = await testApp(smallClub());
  const [day] = await store.list('day');
  const gate = new EventTarget();
  const opened = once(gate, 'open');
  const here = runHere(store);
  const run: typeof here = (name, asked, how) => opened.then(() => here(name, asked, how));
  const estimator = strengthEstimator(store, run, { patienceMs: 0 });
  const news = new EventTarget();
  const told = once(news, 'told');
  onTestFinished(estimator.onNews(() => news.dispatchEvent(new Event('told'))));
  expect((await estimator.ofDay(day!)).awaited).not.toEqual([]);
  gate.dispatchEvent(new Event('open'));
  // Without the news this has no end.
  await told;
});

test('whoever waits comes between two lifters, whatever is done of everybody', async () => {
  const club = smallClub();
  const crowd = Array.from({ length: 20 }, (_, i) => `of-the-crowd-${i}`);
  const { store } = await testApp({
    ...club,
    lifter: [...club.lifter, ...crowd.map((id) => ({ ...club.lifter[0]!, id, name: id }))],
    best: [...club.best, ...crowd.map((id) => ({ ...club.best[0]!, id: `best ${id}`, lifterId: id }))],
  });
  let weighed = 0;
  const estimateLift = async () => {
    weighed += 1;
    return null;
  };
  const estimator = strengthEstimator(store, fakeRun({ estimateLift }));
  const today = await store.today();
  let turns = 0;
  let turn = setImmediate(function others() {
    turns += 1;
    turn = setImmediate(others);
  });
  onTestFinished(() => clearImmediate(turn));
  async function turnsIn(work: () => Promise<unknown>): Promise<number> {
    const before = turns;
    await work();
    return turns - before;
  }
  // Everybody is looked at, and then begun with; those who are known already are looked at again.
  expect(await turnsIn(() => estimator.ofClub(today))).toBeGreaterThanOrEqual(2 * crowd.length);
  expect(weighed).toBeGreaterThanOrEqual(crowd.length);
  expect(await turnsIn(() => estimator.bringUpToDate(today))).toBeGreaterThanOrEqual(crowd.length);
  expect(await turnsIn(() => estimator.summaries())).toBeGreaterThanOrEqual(crowd.length);
});
