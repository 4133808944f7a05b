import { once } from 'node:events';
import { expect, onTestFinished, test } from 'vitest';
import { runHere } from '#server/jobs/runHere.ts';
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
