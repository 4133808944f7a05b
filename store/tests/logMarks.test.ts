import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ClubStore } from '../ClubStore.ts';
import { marksWith } from '../logMarks.ts';
import { Refusal } from '../Refusal.ts';
import { databases } from './databases.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

/** What is done to a log, `n` choosing among what there is; some of it is refused. */
const doings: Record<string, (store: ClubStore, n: number) => Promise<unknown>> = {
  log: (store, n) => store.logSets(Array.from({ length: 1 + (n % 3) }, () => squatSet())),
  other: (store) => store.logSets([squatSet({ lift: 'bench' }), squatSet()]),
  strike: async (store, n) => store.strikeSet(await someSet(store, n)),
  restore: async (store, n) => store.restoreSet(await someSet(store, n)),
  correct: async (store, n) =>
    store.correctSets([{ id: await someSet(store, n), set: squatSet({ made: 1 }) }]),
};

async function someSet(store: ClubStore, n: number): Promise<string> {
  const sets = await store.loggedSets();
  return sets[n % Math.max(sets.length, 1)]?.id ?? 'none';
}

test.each(databases)(
  'the marks of a log that are gone on from are those of the log read whole, whatever was done on $name',
  async ({ open }) => {
    let [gone, whole] = [0, 0];
    const step = fc.record({
      does: fc.constantFrom(...Object.keys(doings)),
      n: fc.nat({ max: 50 }),
      looks: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 20 }), async (steps) => {
        const { store, dispose } = await open();
        try {
          await store.importRecords(smallClub());
          let [seq, marks] = [await store.latestSeq(), await store.logMarks('lifter-1')];
          for (const { does, n, looks } of steps) {
            await doings[does]!(store, n).catch((error: unknown) => {
              if (!(error instanceof Refusal)) throw error;
            });
            if (!looks) continue;
            const touched = await store.touchedSets(seq);
            const now = await store.logMarks('lifter-1');
            const goneOn = marksWith(
              marks,
              touched!.sets.map(({ set }) => set),
            );
            if (goneOn === null) whole += 1;
            else {
              gone += touched!.sets.length;
              expect(goneOn).toEqual(now);
            }
            [seq, marks] = [touched!.seq, now];
          }
        } finally {
          await dispose();
        }
      }),
      { numRuns: 10 },
    );
    expect([gone, whole]).not.toContain(0);
  },
);
