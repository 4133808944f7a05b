import { expect, test } from 'vitest';
import { populationPrior } from '#core/strength/parameters.ts';
import { estimateLift } from '#reckon/strength/estimateLift.ts';
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
        return { ...weighed, maxKg: { ...weighed.maxKg, median: 1 } };
      },
    }),
    true,
    {
      onWeighed: () => {},
      onFault: (error) => {
        throw error;
      },
    },
  );
  expect(await estimates.estimateOf(of)).toEqual(weighed);
  estimates.expect(new Map());
  const asked = await Promise.all([estimates.estimateOf(of), estimates.believeAnew(of)]);
  expect(asked.map((estimate) => estimate?.maxKg.median)).toEqual([1, 1]);
  expect(works).toEqual(['whole log', 'weighed anew']);
});
