import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { sharedSync } from './sharedSync.ts';

/** A disk that brings to safety what was written before it was begun, each time when it is told to. */
function disk() {
  const written: number[] = [];
  let safe = 0;
  let underWay: (() => void)[] = [];
  const sync = sharedSync(async () => {
    const upTo = written.length;
    await new Promise<void>((resolve) => underWay.push(resolve));
    safe = Math.max(safe, upTo);
  });
  return {
    /** Writes, and says when that was acknowledged whether it was safe by then. */
    write: async () => {
      written.push(written.length);
      const mine = written.length;
      await sync();
      return safe >= mine;
    },
    atOnce: () => underWay.length,
    async end() {
      const [first, ...rest] = underWay;
      underWay = rest;
      first?.();
      // Whoever waits for the one before begins now.
      for (let i = 0; i < 10; i += 1) await Promise.resolve();
    },
  };
}

test('nothing is acknowledged before it is on the disk, in whatever order writes come and syncs end', () =>
  fc.assert(
    fc.asyncProperty(fc.array(fc.boolean(), { maxLength: 40 }), async (steps) => {
      const { write, end, atOnce } = disk();
      const all: Promise<boolean>[] = [];
      for (const isWrite of steps) {
        if (isWrite) all.push(write());
        else await end();
        expect(atOnce()).toBeLessThanOrEqual(1);
      }
      while (atOnce() > 0) await end();
      expect(await Promise.all(all)).toEqual(all.map(() => true));
    }),
  ));

test('sixty who write while one sync is under way are brought to the disk by one more', async () => {
  const { write, end, atOnce } = disk();
  const all = Array.from({ length: 60 }, write);
  await end();
  await end();
  expect(await Promise.all(all)).not.toContain(false);
  expect(atOnce()).toBe(0);
});

test('a disk that fails fails those who wrote, and the next who writes asks it anew', async () => {
  let fails = true;
  const sync = sharedSync(async () => {
    if (fails) throw new Error('the disk');
  });
  const both = await Promise.allSettled([sync(), sync()]);
  expect(both.map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  fails = false;
  await expect(sync()).resolves.toBeUndefined();
});
