import { expect, onTestFinished, test, vi } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { type AskClash, changeRecord } from './changeRecord.ts';

const bar = smallClub().bar[0]!;

/** Two tablets before the real server; what is asked on the second is answered with `prefer`. */
async function twoTablets(prefer: Awaited<ReturnType<AskClash>>) {
  const { app, store } = await testApp(smallClub());
  vi.stubGlobal('fetch', (path: string, options: RequestInit) => app.request(path, options));
  onTestFinished(() => void vi.unstubAllGlobals());
  const ask = vi.fn<AskClash>(async () => prefer);
  const change = (wanted: object) => changeRecord('bar', { found: bar, wanted: { ...bar, ...wanted } }, ask);
  return { change, ask, bar: () => store.get('bar', bar.id) };
}

test('what two tablets change of one record in different fields is all there, and nobody is asked', async () => {
  const { change, ask, bar: kept } = await twoTablets(null);
  await change({ note: 'bent' });
  await change({ massKg: 25 });
  expect(await kept()).toEqual({ ...bar, note: 'bent', massKg: 25 });
  expect(ask).not.toHaveBeenCalled();
});

test.each([
  ['theirs', { massKg: 15, note: 'bent' }],
  ['yours', { massKg: 25, note: 'bent' }],
] as const)(
  'of what both changed %s stands once the coach has said so, and the rest of both',
  async (prefer, stands) => {
    const { change, ask, bar: kept } = await twoTablets(prefer);
    await change({ massKg: 15 });
    await change({ massKg: 25, note: 'bent' });
    expect(ask).toHaveBeenCalledExactlyOnceWith(
      'bar',
      expect.objectContaining({
        fields: [{ path: ['massKg'], theirs: 15, yours: 25 }],
        who: { name: 'a test' },
      }),
    );
    expect(await kept()).toEqual({ ...bar, ...stands });
  },
);

test('where the coach does not say, nothing is changed and the refusal goes to the form', async () => {
  const { change, bar: kept } = await twoTablets(null);
  await change({ massKg: 15 });
  await expect(change({ massKg: 25, note: 'bent' })).rejects.toMatchObject({ status: 409, field: 'massKg' });
  expect(await kept()).toEqual({ ...bar, massKg: 15 });
});
