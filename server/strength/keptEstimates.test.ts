import { expect, test } from 'vitest';
import { normalBelief } from '#core/strength/belief.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
import { nothingKept } from '#server/jobs/keptAnswers.ts';
import { fakeRun } from '#server/jobs/tests/fakeRun.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { keptEstimates } from './keptEstimates.ts';

test('whoever asks while the club is still weighed anew waits for no whole log, and nothing is done twice', async () => {
  const { store } = await testApp(smallClub());
  await store.logSets([squatSet()]);
  const of = { lifterId: 'lifter-1', lift: 'squat', on: '2026-11-25' } as const;
  const { records } = await store.records();
  const weighed = estimateLift(records, await store.loggedSets(), of, populationPrior('squat'))!;
  const works: string[] = [];
  const estimates = keptEstimates(
    store,
    fakeRun({
      weighLift: async () => {
        works.push('whole log');
        return { estimate: weighed, state: new Uint8Array() };
      },
      rememberLift: async () => {},
      takeIn: async () => null,
      believeAnew: async () => {
        works.push('weighed anew');
        return { told: { ...weighed, maxKg: { ...weighed.maxKg, median: 1 } }, state: null };
      },
    }),
    true,
    nothingKept,
    {
      onWeighed: () => {},
      onFault: (error) => {
        throw error;
      },
    },
  );
  expect(await estimates.estimateOf(of)).toEqual(weighed);
  const faster = { name: 'lnMaxSpeed', now: normalBelief(0.2, 0.02), before: normalBelief(0, 0.3) };
  const others = ['a', 'b', 'c'].map((lifterId) => ({ ...weighed, lifterId, parameters: [faster] }));
  await estimates.expect({ on: of.on, from: '', lifters: [], told: others });
  const asked = await Promise.all([estimates.estimateOf(of), estimates.believeAnew(of)]);
  expect(asked.map((estimate) => estimate?.maxKg.median)).toEqual([1, 1]);
  expect(works).toEqual(['whole log', 'weighed anew']);
});
