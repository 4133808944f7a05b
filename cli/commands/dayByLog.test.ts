import { expect, it, onTestFinished } from 'vitest';
import { createApp } from '#server/app.ts';
import { strengthEstimator } from '#server/strength/strengthEstimator.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { callCli } from '../tests/callCli.ts';

/** A day of the club's that was worked out while every estimate was still awaited, and the terminal to ask for it. */
async function solvedTooEarly() {
  const { store, folder } = await testApp(smallClub());
  const [club] = await store.list('club');
  const date = new Date().toLocaleDateString('sv-SE', { timeZone: club!.timeZone });
  const { id, ...day } = (await store.list('day'))[0]!;
  await store.update('day', id, { ...day, date });
  const estimator = strengthEstimator(store, never, { patienceMs: 0 });
  onTestFinished(estimator.stop);
  await createApp({ store, webRoot: folder, estimator }).request(`/api/days/${id}/solve`, { method: 'POST' });
  const print = (...args: string[]) => callCli(['day', '--date', date, '--club', store.path, ...args]);
  return { store, id, print };
}

it('prints a number as it was worked out although the log could tell more by now, says so, and tells it as another when asked', async () => {
  const { store, id, print } = await solvedTooEarly();
  const { document, ...about } = (await store.latestPrescription(id))!;
  const [first] = JSON.parse((await print('--form', 'json')).stdout);
  expect(first).toMatchObject(document as object);
  const sheet = await print();
  expect(sheet.stdout).toContain(`fingerprint ${first.fingerprint}`);
  expect(sheet.stderr).toMatch(/^Number 1 .*Ida Quill.*--by-log.*as number 2.*--again.*\n$/);

  const [told] = JSON.parse((await print('--by-log', '--form', 'json')).stdout);
  expect(told).toMatchObject({ number: 2, retells: 1 });
  expect(told.fingerprint).not.toBe(first.fingerprint);
  expect(told.groups).not.toEqual(first.groups);
  expect(await store.prescription(id, 1)).toEqual({ document, ...about });

  // There is nothing more to tell: the number that stands is printed, and no other is made.
  const again = await print('--by-log');
  expect(again.stderr).toBe('');
  expect(again.stdout.replace(/\s+/g, ' ')).toContain(
    `fingerprint ${told.fingerprint}, same bars as number 1`,
  );
  expect((await store.latestPrescription(id))!.number).toBe(2);
});

const never = () => new Promise<never>(() => {});
