import { expect, test } from 'vitest';
import { inTurn } from './inTurn.ts';

/** Work that goes on until it is told to end. */
function open() {
  const begun: string[] = [];
  const ends = new Map<string, { resolve: (value: string) => void; reject: (error: Error) => void }>();
  const work = (name: string) => () =>
    new Promise<string>((resolve, reject) => {
      begun.push(name);
      ends.set(name, { resolve, reject });
    });
  return { begun, work, end: (name: string) => ends.get(name)!.resolve(name), ends };
}
const settled = () => new Promise((resolve) => setImmediate(resolve));
const nobodyStops = new AbortController().signal;

test('no more than so many run at once, and the others begin in their order as these end or fail', async () => {
  const { begun, work, end, ends } = open();
  const turn = inTurn(2);
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((name) => turn(work(name), nobodyStops));
  await settled();
  expect(begun).toEqual(['a', 'b']);
  end('b');
  expect(await b).toBe('b');
  await settled();
  expect(begun).toEqual(['a', 'b', 'c']);
  ends.get('a')!.reject(new Error('The server is gone.'));
  await expect(a).rejects.toThrow('gone');
  await settled();
  expect(begun).toEqual(['a', 'b', 'c', 'd']);
  end('c');
  end('d');
  expect(await Promise.all([c, d])).toEqual(['c', 'd']);
});

test('what is stopped while it waits never begins, and keeps nobody from beginning', async () => {
  const { begun, work, end } = open();
  const turn = inTurn(1);
  const stop = new AbortController();
  const first = turn(work('first'), nobodyStops);
  const stopped = turn(work('stopped'), stop.signal);
  const last = turn(work('last'), nobodyStops);
  stop.abort();
  await expect(stopped).rejects.toThrow();
  await expect(turn(work('too late'), stop.signal)).rejects.toThrow();
  end('first');
  await first;
  await settled();
  expect(begun).toEqual(['first', 'last']);
  end('last');
  expect(await last).toBe('last');
});
